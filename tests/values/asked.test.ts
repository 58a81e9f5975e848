import { describe, expect, test } from 'vitest';
import { readAskedValue } from '../../src/values/asked.ts';

describe('a value that is asked for', () => {
  test.each([
    ['capacitor', '47n', 47e-9],
    ['capacitor', '0.5', 0.5e-6],
    ['resistor', '4,7 kΩ', 4700],
    ['coil', '10 mH', 0.01],
    // The usual one where nothing is written, and what parts have at the ends.
    ['capacitor', '', 50e-9],
    ['capacitor', '1 fF', 1e-15],
    ['resistor', '1000 TΩ', 1e15],
  ])('%s %s', (of, text, value) => {
    const asked = readAskedValue(of, text);
    expect(asked.fault).toBeUndefined();
    expect(asked.value).toBeCloseTo(value, 20);
  });

  test.each([
    ['capacitor', '1e30', /No capacitor .* from 0.001\spF to 10.?000\sF/u],
    ['capacitor', '1e-30', /No capacitor/u],
    ['resistor', '1e16', /No resistor/u],
    ['coil', '1e5 H', /No coil/u],
    ['resistor', '0', /above zero/u],
    ['resistor', '-5', /./u],
    ['resistor', 'abc', /./u],
  ])('%s %s is none, and the usual one is shown', (of, text, fault) => {
    const asked = readAskedValue(of, text);
    expect(asked.fault).toMatch(fault);
    expect(asked.value).toBe(readAskedValue(of, '').value);
  });
});
