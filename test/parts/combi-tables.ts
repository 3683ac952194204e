/**
 * Reads a text file of tables as the documentation of `Modelica.Blocks.Tables.CombiTable2Ds` describes it (from memory; Debian has no program that loads
 * one): `#1` first; then `double name(rows,columns)` and that many numbers, parted by blanks, commas or line ends; `#` begins a comment.
 *
 * @throws Error where the text does not follow
 */
export function combiTables(text: string): ReadonlyMap<string, readonly (readonly number[])[]> {
  const [first, ...rest] = text.split('\n');
  if (first?.trim() !== '#1') throw new Error('a file of tables begins with #1');
  const words = rest
    .map((line) => line.replace(/#.*$/u, ''))
    .join('\n')
    .replaceAll(/\(\s*(\d+)\s*,\s*(\d+)\s*\)/gu, ' $1 $2 ')
    .split(/[\s,;]+/u)
    .filter((word) => word !== '');
  const tables = new Map<string, readonly (readonly number[])[]>();
  let place = 0;
  const next = (): string => {
    const word = words[place++];
    if (word === undefined) throw new Error('the file ends too soon');
    return word;
  };
  const number = (): number => {
    const value = Number(next());
    if (!Number.isFinite(value)) throw new Error(`no number at word ${place}`);
    return value;
  };
  while (place < words.length) {
    const type = next();
    if (type !== 'double') throw new Error(`double, not ${type}`);
    const name = next();
    if (!/^[A-Za-z_]\w*$/u.test(name)) throw new Error(`${name} is no name`);
    const [rows, columns] = [number(), number()];
    tables.set(
      name,
      Array.from({ length: rows }, () => Array.from({ length: columns }, number)),
    );
  }
  return tables;
}
