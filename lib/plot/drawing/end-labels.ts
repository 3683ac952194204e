/** A label that wants a height [px]. */
export interface WantedHeight {
  readonly wanted: number;
}

/**
 * Moves labels apart until none overlaps: labels that touch form a block, and a block sits about the mean of the
 * heights its labels want, which moves all of them least in the sense of least squares.
 *
 * @param labels - in any order
 * @param spacing - least distance between two labels [px]
 * @param low - least height [px]
 * @param high - greatest height [px]; where the labels do not fit they run past it
 * @returns the labels from top to bottom, each with the height it got [px]
 */
export function spreadLabels<Label extends WantedHeight>(
  labels: readonly Label[],
  spacing: number,
  low: number,
  high: number,
): readonly (Label & { readonly top: number })[] {
  const sorted = labels.toSorted((a, b) => a.wanted - b.wanted);
  const blocks: { labels: Label[]; top: number }[] = [];
  for (const label of sorted) {
    let block = { labels: [label], top: placedTop([label]) };
    for (let above = blocks.at(-1); above !== undefined; above = blocks.at(-1)) {
      if (above.top + above.labels.length * spacing <= block.top) break;
      blocks.pop();
      const joined = [...above.labels, ...block.labels];
      block = { labels: joined, top: placedTop(joined) };
    }
    blocks.push(block);
  }
  return blocks.flatMap((block) =>
    block.labels.map((label, index) => ({ ...label, top: block.top + index * spacing })),
  );

  function placedTop(members: readonly Label[]): number {
    const mean =
      members.reduce((sum, label, index) => sum + label.wanted - index * spacing, 0) / members.length;
    return Math.max(low, Math.min(mean, high - (members.length - 1) * spacing));
  }
}
