import { describe, expect, it } from 'vitest';
import { sha256Base64 } from '../../lib/page/blocks/digest.js';
import { contentHash } from '../../lib/page/index.js';

describe('the fingerprint of a page', () => {
  it('changes with the parts file and with each setting, not with their order', async () => {
    const a = { name: 'a', text: '1' };
    const b = { name: 'b', text: '2' };
    const hash = await contentHash('file', [a, b]);
    expect(hash).toMatch(/^[0-9a-f]{16}$/u);
    expect(await contentHash('file', [b, a])).toBe(hash);
    expect(await contentHash('file ', [a, b])).not.toBe(hash);
    expect(await contentHash('file', [a, { ...b, text: '3' }])).not.toBe(hash);
  });

  it('rests on SHA-256: the digest of "abc" (FIPS 180-2, appendix B.1)', async () => {
    const published = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
    expect(Buffer.from(await sha256Base64('abc'), 'base64').toString('hex')).toBe(published);
  });
});
