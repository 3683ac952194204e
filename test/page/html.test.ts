import { describe, expect, it } from 'vitest';
import { html, trusted } from '../../lib/page/html/html.js';
import { htmlText } from '../../lib/page/html/html-text.js';

const hostile = `"><script>alert('1')</script>&amp;`;

describe('a template', () => {
  it('keeps what is put in a text, between elements and in attributes', () => {
    const text = htmlText(html`<p class="a ${hostile} b" id="x">${hostile}</p>`);
    expect(text).toBe(
      `<p class="a &quot;&gt;&lt;script&gt;alert('1')&lt;/script&gt;&amp;amp; b" id="x">"&gt;&lt;script&gt;alert('1')&lt;/script&gt;&amp;amp;</p>`,
    );
    expect(html`<p>${hostile}</p>`.nodes).toEqual([{ tag: 'p', attributes: {}, children: [hostile] }]);
  });

  it('writes out signs that a terminal obeys or that turn the writing, and keeps line ends', () => {
    const said = 'a\u202eb\u0007\u061c\nc';
    const shown = 'a\\u202eb\\u0007\\u061c\nc';
    expect(htmlText(html`<p title="${said}">${said}</p>`)).toBe(`<p title="${shown}">${shown}</p>`);
  });

  it('takes numbers, nodes and lists of nodes, in their order', () => {
    const items = [1, 2].map((number) => html`<li>${number}</li>`);
    expect(htmlText(html`<ul>${items}</ul> and ${html`<b>x</b>`}${''}<br>`)).toBe(
      '<ul><li>1</li><li>2</li></ul> and <b>x</b><br>',
    );
  });

  it('takes markup of its own as it is', () => {
    expect(htmlText(html`<div>${trusted('<svg></svg>')}</div>`)).toBe('<div><svg></svg></div>');
  });

  it.each([['<p>'], ['<p></b>'], ['</p>'], ['a < b']])('refuses %j, which is not closed', (literal) => {
    const fixed = Object.assign([literal], { raw: [literal] });
    expect(() => html(fixed)).toThrow(TypeError);
  });
});
