import path from 'node:path';
import { fileURLToPath } from 'node:url';

export const testNotebooks = fileURLToPath(new URL('./notebooks', import.meta.url));
export const realNotebooks = fileURLToPath(new URL('../../notebooks', import.meta.url));
export const demoParts = path.join(realNotebooks, 'demo-parts.yaml');
