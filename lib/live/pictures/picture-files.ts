/** The SVG of a live picture as a file that stands alone, in the font of the page. */
export function standaloneSvg(live: SVGElement): string {
  const svg = live.cloneNode(true) as SVGElement;
  svg.removeAttribute('style');
  svg.removeAttribute('class');
  svg.removeAttribute('aria-hidden');
  svg.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  const style = document.createElementNS('http://www.w3.org/2000/svg', 'style');
  style.textContent = fontFaces();
  svg.prepend(style);
  return new XMLSerializer().serializeToString(svg);
}

/** An SVG as PNG on white at twice its size. */
export async function pngOf(svg: string): Promise<Blob> {
  const image = new Image();
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  image.src = address;
  await image.decode();
  URL.revokeObjectURL(address);
  const canvas = document.createElement('canvas');
  canvas.width = 2 * image.naturalWidth;
  canvas.height = 2 * image.naturalHeight;
  const ink = canvas.getContext('2d');
  if (ink === null) throw new TypeError('no canvas to draw on');
  ink.fillStyle = '#ffffff';
  ink.fillRect(0, 0, canvas.width, canvas.height);
  ink.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) => {
    canvas.toBlob((blob) => (blob === null ? reject(new TypeError('no PNG')) : resolve(blob)), 'image/png');
  });
}

/** The fonts of the page, which a picture outside of it does not have. */
function fontFaces(): string {
  const rules = [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules]);
  return rules
    .filter((rule) => rule instanceof CSSFontFaceRule)
    .map(({ cssText }) => cssText)
    .join('\n');
}
