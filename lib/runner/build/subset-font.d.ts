declare module 'subset-font' {
  /** Cuts a font down to the letters of a text, with HarfBuzz. */
  function subsetFont(
    font: Uint8Array,
    text: string,
    options: {
      readonly targetFormat: 'woff2' | 'truetype';
      /** OpenType features that stay. */
      readonly keepFeatures: readonly string[];
      readonly noHinting: boolean;
    },
  ): Promise<Buffer>;
  export = subsetFont;
}
