import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { readMarking } from '../../src/engine/index.ts';
import { typeNumberIn } from '../../src/search/type-number.ts';
import { answerHtml } from './answer-html.ts';
import { PRINTED } from './printed-on-devices.ts';

const catalogue = loadCatalogue();

const numberIn = (mark: string) => typeNumberIn(catalogue, mark, readMarking(catalogue, mark));

const boxed = (text: string): string => answerHtml(catalogue, text).replaceAll('\u00a0', ' ');

describe.each(Object.entries(PRINTED))('%s', (_, cases) => {
  it.each(cases)('%s is %s', (mark, id) => {
    expect(numberIn(mark)?.devices.map((device) => device.id)).toEqual([id]);
    expect(boxed(mark)).toMatch(/^<section[^>]*><h2>By type number<\/h2>/u);
  });
});

describe('a part without a page', () => {
  it.each([
    ['LT1086CT', 'an adjustable positive regulator for 1.5 A', 'LM317'],
    ['LT1086CT-12', 'a positive fixed regulator for 12 V', ''],
    ['LM2940T-12', 'regulator for 12 V', ''],
    ['LM2940CT-12', 'regulator for 12 V', ''],
    ['LM2940T-12.0', 'regulator for 12 V', ''],
    ['LM201H', 'first issue of the 301A', '301A'],
    ['CD4066AE', 'first issue of the 4066', '4066B'],
    ['B40C3200', 'a bridge rectifier for 40 V of AC voltage at its input and 3200 mA', ''],
    ['B80C5000/3300', 'a bridge rectifier for 80 V of AC voltage at its input and 5000 mA', ''],
    ['KBPC2504', 'a bridge rectifier for 25 A and 400 V', ''],
    ['KBPC3510', 'a bridge rectifier for 35 A and 1000 V', ''],
    ['KBPC1005', 'a bridge rectifier for 10 A and 500 V', ''],
    ['KBPC25005', 'a bridge rectifier for 25 A and 50 V', ''],
    ['KBPC2500', 'a bridge rectifier for 25 A and 50 V', ''],
    ['MPS3704', 'an NPN transistor', 'BC337'],
    ['E112', 'an N-channel JFET', 'J112'],
  ])('%s is %s, near %s', (mark, what, near) => {
    expect(numberIn(mark)?.devices).toEqual([]);
    expect(boxed(mark)).toContain(what);
    expect(boxed(mark)).toContain(near === '' ? 'It has no page here' : `>${near}</a>`);
  });
});

describe('a number that is not held is told by the register that gave it', () => {
  it.each([
    ['AA91', 'a germanium diode for small signals, by the European register'],
    ['BAY61', 'a silicon diode for small signals, by the European register'],
    ['BUX80', 'a silicon power transistor for switching'],
    ['BFR91', 'a silicon transistor for high frequencies'],
    ['BSS38', 'a silicon transistor for switching'],
    ['2SC3000', 'an NPN transistor for high frequencies'],
    ['TDA9999', 'an analogue chip, by the European register'],
    ['SN74LS299N', 'a chip of the 74 series, low-power Schottky'],
    ['DM54LS299J', 'a chip of the 74 series, low-power Schottky'],
    ['CD4999BE', 'a chip of the 4000 series'],
    ['VA1026', 'a thermistor'],
    ['E298ED', 'a voltage-dependent resistor'],
  ])('%s may be %s', (mark, names) => {
    expect(numberIn(mark)?.devices).toEqual([]);
    expect(boxed(mark)).toContain(names);
    expect(boxed(mark)).toContain('it is not among the devices here');
  });
});

it('says what is printed round a number', () => {
  expect(boxed('RCA CD4016AE 640')).toMatch(
    /Round the number: CD, prefix [^;]*; E, plastic package; RCA, letters of a maker[^;]*; 640, a date/u,
  );
  expect(boxed('CD4016CN')).toContain('no B behind the number');
  expect(boxed('741')).not.toContain('Round the number');
});

it.each(['324 100V', 'RC4558P 104K', '104 J 7743', '4700 16', '1000 25', '100n K 7743'])(
  '“%s” is no device beside a word of a lot',
  (mark) => {
    expect(numberIn(mark)?.sure ?? false).toBe(false);
  },
);
