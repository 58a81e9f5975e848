import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { z } from 'zod';
import { readColours } from '../../src/engine/colours/index.ts';
import type { Reading } from '../../src/engine/markings/index.ts';
import { catalogue } from '../engine/markings/tables.ts';

/** Colours that outside sources print with their meaning, beside the source of each. */
const row = z.strictObject({
  id: z.string(),
  form: z.string(),
  colours: z.string(),
  expected: z.string(),
  source: z.string().min(1),
  locator: z.string().min(1),
  note: z.string(),
});

const records: unknown = parse(readFileSync('tests/published/colours.csv', 'utf8'), {
  columns: true,
});
const cases = z.array(row).parse(records);

const close = (actual: number | undefined, wanted: string): void =>
  expect(actual).toBeCloseTo(Number(wanted), 9);

/** How each key of an expectation is compared with the first reading. */
const checks: Record<string, (reading: Reading, wanted: string) => void> = {
  C_pF: ({ capacitance }, wanted) => close((capacitance?.typ ?? NaN) / 1e-12 / Number(wanted), '1'),
  ohm: ({ resistance }, wanted) => close(resistance?.typ, wanted),
  tol: ({ tolerance }, wanted) => {
    expect(tolerance?.unit).toBe('fraction');
    close((tolerance?.plus ?? NaN) * 100, wanted);
    close((tolerance?.minus ?? NaN) * 100, wanted);
  },
  V: ({ ratedVoltage }, wanted) => close(ratedVoltage?.typ, wanted),
  TC_ppm: ({ temperatureCharacteristic: own }, wanted) =>
    close((own?.coefficient?.typ ?? NaN) * 1e6, wanted),
  TC_from: ({ temperatureCharacteristic: own }, wanted) =>
    close((own?.coefficient?.min ?? NaN) * 1e6, wanted),
  TC_to: ({ temperatureCharacteristic: own }, wanted) =>
    close((own?.coefficient?.max ?? NaN) * 1e6, wanted),
  drift_ppm: ({ temperatureCoefficient }, wanted) =>
    close((temperatureCoefficient?.max ?? NaN) * 1e6, wanted),
  letter: ({ temperatureCharacteristic: own }, wanted) => expect(own?.code).toBe(wanted),
  type: ({ types }, wanted) => expect(types).toContain(wanted),
  says: ({ evidence }, wanted) =>
    expect(evidence.map(({ means }) => means).join('; ')).toContain(wanted),
  'outer foil': ({ polarity }, wanted) => expect(polarity).toContain(wanted),
};

test.each(cases)('$id: $form, $colours ($source)', ({ form, colours, expected }) => {
  const [reading] = readColours(catalogue, {
    form,
    colours: colours.split(' ').map((name) => (name === '?' ? undefined : name)),
  });
  expect(reading).toBeDefined();
  if (reading === undefined) return;
  for (const part of expected.split('; ')) {
    const [key = '', wanted = ''] = part.split('=');
    const check = checks[key];
    expect(check, key).toBeDefined();
    check?.(reading, wanted);
  }
});
