import { describe, expect, it } from 'vitest';
import { readDay } from '../../lib/parts/index.js';

describe('temperatures of a day as CSV', () => {
  it('reads times and temperatures in SI, quotes and other columns', () => {
    expect(readDay('time,note,temperature\r\n8:30,"cold, wet",8 °C\n14:00,,"311.15 K"\n')).toEqual([
      { time: 30_600, temperature: 281.15 },
      { time: 50_400, temperature: 311.15 },
    ]);
  });

  it('says line by line what is wrong', () => {
    expect(() => readDay('time,temperature\n25:00,8 °C\n9:00,eight\n', 'd.csv')).toThrow(
      'd.csv:2:1 time: must be a time of day such as "14:30", 24 hours, got "25:00"\nd.csv:3:1 temperature: ',
    );
    expect(() => readDay('time,temperature\n9:00,8 °C\n9:00,9 °C\n')).toThrow(':3:1 time: must be later');
    expect(() => readDay('time;temperature\n9:00;8 °C\n')).toThrow(':2:1 time: is missing');
    expect(() => readDay('')).toThrow('must have a line "time,temperature"');
    expect(() => readDay(`time,temperature\n${' '.repeat(1_000_001)}`)).toThrow('at most 1 MB');
  });
});
