import { createHash } from 'node:crypto';
import { renderSvg } from '../../lib/plot/index.js';
import { sampleFigures } from './sample-figures.js';

// Run in a process of its own by the test of the drawing.
const hash = createHash('sha256');
for (const figure of sampleFigures)
  for (const layout of ['wide', 'narrow'] as const) hash.update(await renderSvg(figure, layout));
process.stdout.write(hash.digest('hex'));
