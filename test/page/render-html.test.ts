import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../lib/base/input-error.js';
import { type Page, pagePassed, readParameterValues, renderHtml } from '../../lib/page/index.js';
import { contentOf, hostileName, notebook, parts } from './sample-page.js';

const pageAt = (temperature: string): Page =>
  notebook.run(parts, readParameterValues(notebook.parameters, { temperature }, parts));
const page = pageAt('20 °C');
const html = await renderHtml(contentOf(page));
/** The tags alone, without the texts between them. */
const tags = (html.match(/<[^>]*>/gu) ?? []).join('\n');

describe('the HTML of a page', () => {
  it('is the same again', async () => {
    expect(await renderHtml(contentOf(pageAt('20 °C')))).toBe(html);
  });

  it('says its answer first', () => {
    const main = html.slice(html.indexOf('<main>'));
    expect(main).toMatch(/^<main>\s*<p class="answer">With two holes the force is 1\u00a0N\.<\/p>/u);
  });

  it('lets nothing be loaded or run, and names its style by hash', () => {
    const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/u.exec(html)?.[1] ?? '';
    const style = /<style>([\s\S]*?)<\/style>/u.exec(html)?.[1] ?? '';
    const hash = createHash('sha256').update(style).digest('base64');
    expect(policy).toBe(
      `default-src 'none'; style-src 'sha256-${hash}'; font-src data:; base-uri 'none'; form-action 'none'`,
    );
    expect(html.match(/<style/gu)).toHaveLength(1);
    expect(tags).not.toMatch(/ style=|<script|<link|<iframe|<form|javascript:| on[a-z]+=/u);
  });

  it('refers to nothing outside itself', () => {
    expect(tags.replaceAll('xmlns="http://www.w3.org/2000/svg"', '')).not.toMatch(/https?:| src=/u);
    expect(html).not.toMatch(/url\((?!data:|#)/u);
  });

  it('shows hostile names as text wherever they stand', () => {
    expect(html).not.toContain(hostileName);
    expect(html).not.toContain('<img');
    const escaped = '&lt;script&gt;alert("1")&lt;/script&gt;';
    // Settings and the table of oils; the heading of the table behind the figure.
    expect(html.split(escaped).length - 1).toBeGreaterThanOrEqual(3);
  });

  it('says pass and fail in words', async () => {
    expect(html).toContain('Check passed.');
    expect(html).not.toContain('checks failed.');
    const failed = await renderHtml(contentOf(pageAt('60 °C')));
    expect(failed).toContain('Check failed.');
    expect(failed).toContain('1 of 1 checks failed.');
    // What to do about it stands there only where it is needed.
    expect(failed).toContain('Cool it.');
    expect(html).not.toContain('Cool it.');
    expect([pagePassed(page), pagePassed(pageAt('60 °C'))]).toEqual([true, false]);
  });

  it('calls a page that was compared with itself alone consistent, not checked', async () => {
    const inner = (temperature: string) => {
      const one = pageAt(temperature);
      const blocks = one.blocks.map((block) =>
        block.kind === 'check' ? { ...block, consistency: true } : block,
      );
      return renderHtml(contentOf({ ...one, blocks }));
    };
    expect(await inner('20 °C')).toContain('✓ Consistent.');
    expect(await inner('20 °C')).not.toContain('Check passed.');
    expect(await inner('60 °C')).toContain('✗ Not consistent.');
  });

  it('gives each figure a caption and a table that is not too long', () => {
    expect(html).toContain(
      '<figcaption><strong>Figure 1.</strong> At 100\u00a0<span class="unit">mm/s</span> the force is 1\u00a0N.</figcaption>',
    );
    expect(html).toContain('21 of 61 rows are shown; all are in');
    const table = html.slice(html.indexOf('<details>'), html.indexOf('</details>'));
    expect(table.match(/<tr>/gu)).toHaveLength(22);
    expect(table).toContain('<td>1000</td>');
  });

  it('says what it is for, cautions, and where it comes from', () => {
    const footer = html.slice(html.indexOf('<footer>'));
    expect(footer).toContain('For scale models only, never for a vehicle that carries people.');
    expect(footer).toContain("maker's instructions");
    expect(footer).toContain('dashpot 1.2.3 from content 0123456789abcdef');
    expect(footer).toContain('Licence text');
  });

  it('refuses two blocks of one id, and a figure that was not drawn', async () => {
    const twice = { ...page, blocks: [...page.blocks, ...page.blocks] };
    await expect(renderHtml(contentOf(twice))).rejects.toThrow(InputError);
    await expect(renderHtml({ ...contentOf(page), pictures: new Map() })).rejects.toThrow(
      'force was not drawn',
    );
  });
});
