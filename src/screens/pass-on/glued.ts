/** A number and its unit stay on one line of what is shown; what is saved has plain spaces. */
export const glued = (line: string): string =>
  line.replace(/(\d) (?=(?:mm|cm|in|po|Zoll|m|yd|g)(?!\p{L}))/gu, '$1\u00a0');
