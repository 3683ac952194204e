import { asShipped } from './as-shipped.js';

// Time of an order plan of 40 bottles, 12 builds and 30 temperatures, by trying sets and by integer programming, in one thread and in all.
await asShipped('order-plan/measure.ts');
