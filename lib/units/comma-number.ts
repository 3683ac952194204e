const grouped = /^([+\-−]?[1-9]\d{0,2}(?:,\d{3})+)((?:\.\d*)?)(?:\s*([^\d\s].*)?)$/su;

/**
 * What to do about a number with commas, or nothing where the commas can only be decimal ones.
 *
 * One comma before three digits can part thousands or stand for a point: a bottle of 1,000 cSt is a thousand times as thick as one of
 * 1 cSt, so that neither is taken for granted.
 *
 * @param text - a text that begins with a number, such as `1,000 cSt`
 */
export function groupedNumberFault(text: string): string | undefined {
  const [, digits = '', fraction = '', unit = ''] = grouped.exec(text.trim()) ?? [];
  if (digits === '') return undefined;
  const written = (number: string): string => `${number}${unit === '' ? '' : ` ${unit.trim()}`}`;
  const [whole = '', ...thousands] = digits.split(',');
  const large = written(`${whole}${thousands.join('')}${fraction}`);
  if (thousands.length > 1 || fraction !== '') return `has commas between its digits; write ${large}`;
  const decimals = (thousands[0] ?? '').replace(/0+$/u, '');
  const small = written(decimals === '' ? whole : `${whole}.${decimals}`);
  return `can mean ${large} or ${small}; write the one that you mean, without a comma`;
}
