/** A part by its place in the file, of the lists that the form of a page can change. */
export interface PartPlace {
  readonly list: 'oils' | 'pistons';
  readonly index: number;
}

/** A place as one word after another, `oils 3`. */
export function placeText({ list, index }: PartPlace): string {
  return `${list} ${index}`;
}

/** The place that a text names; none where the text is empty. */
export function placeIn(text: string): PartPlace | undefined {
  const [list, index] = text.split(' ');
  return list === 'oils' || list === 'pistons' ? { list, index: Number(index) } : undefined;
}
