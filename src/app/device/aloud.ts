/** Reads a sentence aloud in the given language; a new one cuts off the one before. */
export function readAloud(sentence: string, language: string): void {
  if (!canReadAloud()) return;
  speechSynthesis.cancel();
  const saying = new SpeechSynthesisUtterance(sentence.replaceAll('\u00ad', ''));
  saying.lang = language;
  saying.rate = 0.9;
  speechSynthesis.speak(saying);
}

export const canReadAloud = (): boolean => 'speechSynthesis' in globalThis;

export function hush(): void {
  if (canReadAloud()) speechSynthesis.cancel();
}
