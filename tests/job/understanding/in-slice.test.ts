import { expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { sliceReading } from '../../../src/catalogue/slices/slice-reading.ts';
import { emptyLine, type Line } from '../../../src/job/model/job.ts';
import { understoodLine } from '../../../src/job/understanding/understood.ts';

/** A page understands lines by the slice for reading alone: as well as by all tables. */

const whole = loadCatalogue();
const slice = sliceReading(whole);

test.each<Partial<Line>>([
  { designators: 'R7', marking: '220R 1/4W regulator' },
  { designators: 'C302', marking: '470/25 +12 V regulator out' },
  { designators: 'VR1', marking: '1M log vol' },
  { designators: 'VR1', marking: '5k log with switch' },
  { designators: 'P1', marking: '10k lineare tensione' },
  { designators: 'C10', value: '10/40 pF', type: 'ajustable' },
  { designators: 'IC102', marking: 'NE 645' },
  { designators: 'U6', marking: 'CA3094' },
  { designators: 'U1', marking: 'LM318H' },
  { designators: 'IC1', marking: 'К140УД7' },
  { designators: 'Q1', marking: '2N3904' },
  { designators: 'VT1', marking: 'МП42Б' },
  { designators: 'X1', marking: 'something' },
  { kind: 'resistor', marking: '470' },
  { kind: 'resistor', marking: '4k7 0,1 W' },
  { kind: 'resistor', marking: '10k 1%' },
  { kind: 'capacitor', marking: '470 µF 350V' },
  { kind: 'capacitor', type: 'film-x2', marking: '0.1 µF 250V~ X2' },
  { kind: 'trimmer', marking: '47k offset trim' },
  { marking: 'condensateur 47n pour le potentiomètre' },
])('%o is understood alike', (said) => {
  const line = { ...emptyLine('a'), ...said };
  expect(understoodLine(slice, line)).toEqual(understoodLine(whole, line));
});
