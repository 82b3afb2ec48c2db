/**
 * A message is a text with figures in braces, '{row} of {rows}', and trade words that US and UK say differently in
 * brackets, '[bind off]'. One that depends on a number has a form for each plural; the figure `count` decides.
 */
export type Message = string | Plural;

/** Forms by the categories of CLDR (Intl.PluralRules). English has these two; what a language lacks stays out. */
export interface Plural {
  readonly one: string;
  readonly other: string;
  readonly zero?: string;
  readonly two?: string;
  readonly few?: string;
  readonly many?: string;
}

export type Words = Readonly<Record<string, Message>>;

/** A translation has a message for every one of the English catalogue's; a missing one does not compile. */
export type Translation<English extends Words> = {
  readonly [Key in keyof English]: English[Key] extends Plural ? Plural : string;
};

type NamesIn<Text extends string> = Text extends `${string}{${infer Name}}${infer Rest}`
  ? Name | NamesIn<Rest>
  : never;

export type NamesOf<M extends Message> = M extends string
  ? NamesIn<M>
  : M extends Plural
    ? 'count' | NamesIn<M['one']> | NamesIn<M['other']>
    : never;

/** The figures that a message asks for. */
export type Figures<M extends Message> = { readonly [Name in NamesOf<M>]: string | number };

/** Nothing to give where the message asks for nothing. */
export type FigureArgs<M extends Message> = [NamesOf<M>] extends [never] ? [] : [figures: Figures<M>];
