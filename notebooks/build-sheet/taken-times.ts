import { quantity } from '../../lib/page/index.js';

const time = { dimension: 'time', unit: 's', default: 0, min: 0, max: 60, step: 0.05 } as const;

/** What both weights took on the finished shock, for those who have timed them. */
export const takenTimes = {
  weightTime: quantity({
    ...time,
    label: 'Time of the weight',
    help: 'What it took on the finished shock; 0 s where it was not timed.',
  }),
  lighterTime: quantity({
    ...time,
    label: 'Time of the lighter weight',
    help: 'What it took over the same stretch; 0 s where it was not timed.',
  }),
};
