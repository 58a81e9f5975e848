import { driftWithResistor } from '../equations/drift.ts';
import { centsOfDrift } from '../equations/pitch.ts';
import { exactly } from '../quantities/range.ts';
import { quantity } from './sum.ts';

/** A temperature coefficient to ask for. */
export const coefficient = (label: string, symbol: string, usual: string) =>
  quantity({
    label,
    symbol,
    unit: '1/K',
    bare: 'ppm/K',
    usual,
    lowest: -0.01,
    highest: 0.01,
  });

/** How much warmer or cooler it gets. */
export const warming = quantity({
  label: 'Change of temperature',
  symbol: 'dT',
  unit: 'K',
  usual: '10 K',
  lowest: 0,
  highest: 200,
});

/** What a time that a resistor and a capacitor set is asked for about temperature. */
export const temperatureInputs = {
  tcR: coefficient('Temperature coefficient of the resistor', 'alpha_R', '50 ppm/K'),
  tcC: coefficient('Temperature coefficient of the capacitor', 'alpha_C', '-150 ppm/K'),
  span: warming,
} as const;

export const temperatureOutputs = {
  drift: { label: 'Change with temperature', symbol: 'd', unit: 'fraction' },
  cents: { label: 'The same as pitch', unit: 'cents' },
} as const;

/** How far such a time moves with temperature, as a fraction and in cents of pitch. */
export const driftOf = (
  tcR: number,
  tcC: number,
  span: number,
): Record<keyof typeof temperatureOutputs, number> => {
  const drift = driftWithResistor(exactly(tcC), exactly(tcR), span);
  return { drift: drift.typ, cents: centsOfDrift(drift).typ };
};
