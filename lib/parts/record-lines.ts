/** The rows of a recorded file, without what YAML would take for indentation. */
export function recordLines(record: string): readonly string[] {
  return record
    .replace(/^\uFEFF/u, '')
    .split(/\r\n|\r|\n/u)
    .map((row) => row.replace(/^ +| +$/gu, ''))
    .filter((row) => row.trim() !== '');
}

/** A text that ends its last line. */
export function withNewline(text: string): string {
  return text === '' || text.endsWith('\n') ? text : `${text}\n`;
}
