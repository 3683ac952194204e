import { asShipped } from './as-shipped.js';

// Time of a 201-point curve of a piston with ten unlike holes, gap and one valve over that of a plain one.
await asShipped('ten-holes/measure.ts');
