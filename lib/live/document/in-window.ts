/** So far beyond its edge what is in the window is looked at [px]: a finger that scrolls shows it next. */
const margin = 40;

/**
 * Tells which blocks of a page are in the window: those from one place up to another, as they stand in the document now. Of no blocks at all it is the place
 * where they would stand.
 */
export function blocksInWindow(main: Element): (from: number, to: number) => boolean {
  const children = [...main.children];
  const before = children.findIndex(({ className }) => className === 'settings');
  const boxOf = (place: number): DOMRect | undefined => children[before + 1 + place]?.getBoundingClientRect();
  return (from, to) => {
    const [first, last] = [boxOf(from === to ? from - 1 : from), boxOf(to - 1)];
    if (first === undefined || last === undefined) return true;
    return (from === to ? first.bottom : first.top) < innerHeight + margin && last.bottom > -margin;
  };
}
