/** What the first screens say, beside what is always there (src/words/catalogues.ts). */
export * as notices from './notices.ts';
export * as workbasket from './workbasket.ts';
