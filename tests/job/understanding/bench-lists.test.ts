import { describe, expect, test } from 'vitest';
import { parseQuantity } from '../../../src/engine/index.ts';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { emptyLine, type Line } from '../../../src/job/model/job.ts';
import { understoodLine } from '../../../src/job/understanding/understood.ts';

/** Lines as they stood in eight invented lists of the bench, where each was read wrongly at first. */

const catalogue = loadCatalogue();
const read = (said: Partial<Line>) => understoodLine(catalogue, { ...emptyLine('a'), ...said });
const firstOf = (said: Partial<Line>, about: 'type' | 'position') =>
  read(said).asks.find((ask) => ask.about === about)?.choices[0]?.set[about];

describe('what a part is', () => {
  test.each<[Partial<Line>, string]>([
    [{ designators: 'C101', marking: '4µ7/35 tropfen' }, 'ta-mno2-solid'],
    [{ designators: 'C8', marking: '22µ 25V blau Tropfen' }, 'ta-mno2-solid'],
    [{ designators: 'C6', marking: '40n 30V Scheibe' }, 'ceramic-disc-unknown'],
    [{ designators: 'C509', marking: '47µF 20V wet tant CL65' }, 'ta-wet'],
    [{ designators: 'C511', marking: 'CK05BX104K' }, 'ceramic-x7r'],
    [{ designators: 'C12', marking: '0.02 bumblebee 400V' }, 'paper-oil'],
  ])('%o is told', (said, type) => {
    const { part } = read(said);
    expect(part.type ?? firstOf(said, 'type')).toBe(type);
  });

  test.each<[Partial<Line>, string]>([
    // +80/-20 % is made in ceramic of high capacitance alone.
    [{ kind: 'capacitor', marking: '103Z' }, 'ceramic-y5v'],
    [{ kind: 'capacitor', marking: '1n 1%' }, 'ps-film-foil'],
    [{ kind: 'capacitor', marking: '101K 50V' }, 'ceramic-c0g'],
    [{ kind: 'capacitor', marking: '680p 2kV' }, 'ceramic-disc-unknown'],
    [{ kind: 'capacitor', marking: '.005 1KV' }, 'ceramic-disc-unknown'],
    [{ kind: 'resistor', marking: '1k 1W' }, 'carbon-composition'],
    [{ kind: 'resistor', marking: '56K 1W' }, 'carbon-composition'],
    [{ kind: 'capacitor', marking: '5/70 axial' }, 'al-electrolytic-wet'],
    [{ kind: 'capacitor', marking: '8 µF 500 V' }, 'al-electrolytic-wet'],
    // Values that went out with preferred numbers are of paper at the volts of valves.
    [{ kind: 'capacitor', marking: '0,05 uF 1000V' }, 'paper-wax'],
    [{ kind: 'capacitor', marking: '25n 400V' }, 'paper-wax'],
    [{ kind: 'capacitor', marking: '.02 600V' }, 'paper-wax'],
    [{ kind: 'capacitor', marking: '.02 1KV' }, 'ceramic-disc-unknown'],
    [{ kind: 'capacitor', marking: '.05 50V' }, 'pet-metallized'],
    [{ kind: 'capacitor', marking: '22n 400V' }, 'pet-metallized'],
    // No bead of tantalum has picofarads.
    [{ kind: 'capacitor', value: '4.7 pF', marking: 'bead' }, 'silvered-mica'],
    [{ kind: 'capacitor', marking: '100 p stiroflex' }, 'ps-film-foil'],
    [{ kind: 'capacitor', marking: '1nF 500V Durchführung' }, 'ceramic-disc-unknown'],
    [{ kind: 'capacitor', marking: '500pF feedthru' }, 'ceramic-disc-unknown'],
    [{ kind: 'capacitor', marking: '0.01 uf discap 150V' }, 'ceramic-disc-unknown'],
    [{ kind: 'capacitor', marking: '.1 PTM 400V' }, 'paper-wax'],
    [{ kind: 'resistor', marking: '33 1W flame proof' }, 'metal-oxide'],
    [{ kind: 'resistor', marking: '10R FR' }, 'fusible-film'],
    [{ kind: 'resistor', marking: '1M HV' }, 'high-voltage-glaze'],
    [{ kind: 'trimmer', marking: '10k 10-turn' }, 'cermet-multiturn'],
    [{ designators: 'R110', marking: 'RJ24FX103' }, 'cermet-multiturn'],
    [{ kind: 'trimmer', marking: '500R cermet 25T' }, 'cermet-multiturn'],
    [{ kind: 'trimmer', marking: '100k 25T' }, 'cermet-multiturn'],
    [{ kind: 'trimmer', marking: '1k draht' }, 'wirewound-trimmer'],
    [{ kind: 'trimmer', marking: '5k wirewound 10T' }, 'wirewound-trimmer'],
    [{ kind: 'pot', marking: '10k lin w/w' }, 'wirewound-pot'],
    [{ kind: 'resistor', marking: '4M7 HV 1W VR37' }, 'high-voltage-glaze'],
    [{ kind: 'resistor', marking: '6M8 VR37' }, 'high-voltage-glaze'],
  ])('%o is offered first', (said, type) => {
    const { part } = read(said);
    expect(part.type ?? firstOf(said, 'type')).toBe(type);
  });

  test.each<[Partial<Line>, string]>([
    [{ kind: 'capacitor', marking: '0,1µF 400V', type: 'papier huilé' }, 'paper-oil'],
    [{ kind: 'resistor', value: '2,2M', type: 'aggloméré' }, 'carbon-composition'],
    [{ kind: 'resistor', value: '1k', type: 'couche métal' }, 'metal-film'],
    [{ kind: 'trimmer', value: '10k', type: 'ajustable 10 tours' }, 'cermet-multiturn'],
  ])('what the column of types calls %o is offered first', (said, type) => {
    expect(firstOf(said, 'type')).toBe(type);
  });

  test.each<[Partial<Line>, string]>([
    [{ designators: 'RV2', marking: '1k draht' }, 'resistor'],
    [{ designators: 'BT1', marking: '15 V 220 battery' }, 'capacitor'],
  ])('%o is not surely what its letters are not', (said, kind) => {
    expect(read(said).part.kind).not.toBe(kind);
  });
});

describe('four figures beside a tolerance', () => {
  test.each([
    ['1500 2%', ['150', '1.5k']],
    ['4700 5%', ['4.7k', '470']],
    ['1500 10%', ['1.5k', '150']],
    ['1000 J', ['100', '1k']],
  ])('%s is asked about', (marking, values) => {
    const [ask] = read({ kind: 'resistor', marking }).asks;
    expect(ask?.about).toBe('marking');
    expect(ask?.choices.map(({ set }) => set.value)).toEqual(values);
  });

  test.each([
    ['68000', ['68k', '6.8k']],
    ['470000', ['470k']],
  ])('ohms as they stand, %s, are offered first', (marking, values) => {
    const [ask] = read({ kind: 'resistor', marking }).asks;
    expect(ask?.choices.map(({ set }) => set.value)).toEqual(values);
  });

  test.each([
    ['22000 1/2W', 22e3],
    ['33000 10%', 33e3],
    // The fifth figure of accurate wire counts the zeros.
    ['RB52CE10001B', 10e3],
    ['RTR22DW502M', 5e3],
    ['1500 2% 1/4W', 1500],
    ['1500F', 150],
    ['1002 1%', 10e3],
  ])('%s is not', (marking, ohm) => {
    const { part } = read({ kind: 'resistor', marking });
    expect(part.value?.typ).toBeCloseTo(ohm, 6);
  });
});

test('of a resistor nobody asks whether it is a capacitance', () => {
  const { asks } = read({ kind: 'resistor', marking: 'M55342/06B10E0M' });
  const labels = asks.filter(({ about }) => about === 'marking').flatMap(({ choices }) => choices);
  expect(labels.map(({ label }) => label).filter((label) => !label.startsWith('resistor'))).toEqual(
    [],
  );
});

describe('a number of military mica or glass', () => {
  test.each([
    ['CMR05F101JODR', 100e-12, 'silvered-mica'],
    ['CMR06F102JPCS', 1e-9, 'silvered-mica'],
    ['CYFR10C101JR', 100e-12, 'glass'],
  ])('%s', (marking, farad, type) => {
    const { part } = read({ kind: 'capacitor', marking });
    expect(part.capacitance?.typ).toBeCloseTo(farad, 15);
    expect(part.type).toBe(type);
  });
});

describe('where a part sits', () => {
  test.each<[Partial<Line>, string]>([
    [{ kind: 'capacitor', marking: '100/16 ELKO', note: 'Emitter' }, 'emitter-bypass'],
    [{ kind: 'resistor', marking: '5,6 Ohm', note: 'emitter' }, 'output-emitter'],
    [{ kind: 'resistor', marking: '1k8', note: 'emitter' }, 'bias-resistor'],
    [{ kind: 'capacitor', marking: '250p mica', note: 'treble' }, 'tone-stack'],
    [{ kind: 'capacitor', marking: '30 µF/15 V', note: 'AGC' }, 'agc-bypass'],
    [{ kind: 'capacitor', marking: '10µ/25 rad', note: 'rail' }, 'bulk-rail'],
    [{ kind: 'capacitor', marking: '220n MKT 63V', note: 'hold' }, 'sample-hold'],
    [{ kind: 'resistor', marking: '18k2 0,1%', note: 'divider' }, 'precision-divider'],
    [{ kind: 'resistor', marking: '9k 0,5%', note: 'range divider' }, 'precision-divider'],
    [{ kind: 'resistor', marking: '100k', note: 'feedback' }, 'gain-resistor'],
    [{ kind: 'resistor', marking: '1 Ohm 1%', note: 'shunt' }, 'precision-divider'],
    [{ kind: 'resistor', marking: '1k 1W', note: 'screen' }, 'hot-power'],
    // Of places that bear one name the value says which.
    [{ kind: 'capacitor', marking: '40n 400V', note: 'bypass' }, 'local-decoupling'],
    [{ kind: 'capacitor', marking: '0.02uF 1000V', note: 'mains r.f. bypass' }, 'mains-x'],
    [{ kind: 'capacitor', marking: '0.005 1000V', note: 'tone' }, 'tone-stack'],
    [{ kind: 'capacitor', marking: '40 nF 500V cer emitter bypass' }, 'local-decoupling'],
    [{ kind: 'capacitor', marking: '47µ 16V emitter bypass' }, 'emitter-bypass'],
    [{ kind: 'capacitor', marking: '100µ 12V', note: 'Katode' }, 'cathode-bypass'],
    [{ kind: 'capacitor', marking: '10n Keramik', note: 'Abblock' }, 'local-decoupling'],
    // Where nothing is said, the most usual place of such a value.
    [{ kind: 'resistor', marking: '1 Ohm' }, 'output-emitter'],
    [{ kind: 'resistor', marking: '5,6 Ohm', type: 'carbon-film' }, 'output-emitter'],
    [{ kind: 'resistor', marking: '0,47 5W' }, 'output-emitter'],
    [{ kind: 'resistor', marking: '10 Ohm 7W', type: 'wirewound' }, 'inrush-limiter'],
    [{ kind: 'resistor', marking: '4.7 meg' }, 'grid-leak'],
    [{ kind: 'resistor', marking: '1M 1/2W' }, 'grid-leak'],
    [{ kind: 'resistor', marking: '10k' }, 'gain-resistor'],
  ])('%o', (said, position) => {
    expect(firstOf(said, 'position')).toBe(position);
  });
});

describe('a value whose unit nobody knows', () => {
  test.each<[Partial<Line>, RegExp]>([
    [
      { designators: 'C1', kind: 'capacitor', value: '10 kg' },
      /“kg” is not a unit of capacitance/u,
    ],
    [{ designators: 'C1', kind: 'capacitor', value: '10 apples' }, /“apples”/u],
    [{ designators: 'R1', kind: 'resistor', value: '10 kg' }, /“kg” is not a unit of resistance/u],
  ])('%o is refused, and said', (said, message) => {
    const { part } = read(said);
    expect(part.rejected['value']).toMatch(message);
    expect(part.capacitance ?? part.value).toBeUndefined();
  });

  test.each<[Partial<Line>, number[]]>([
    [{ designators: 'C1', value: '10.000' }, [10e-9, 10e-3]],
    [{ designators: 'R1', kind: 'resistor', value: '10.000' }, [10e3]],
    [{ designators: 'R1', kind: 'resistor', value: '4,700' }, [4700]],
    // A maker's name beside plain ohms.
    [{ designators: 'R1', kind: 'resistor', value: '220 Vitrohm' }, [220, 22]],
  ])('%o is asked, none of it settled', (said, values) => {
    const { part, asks } = read(said);
    const unit = said.kind === 'resistor' ? 'ohm' : 'F';
    const offered = asks.find(({ about }) => about === 'marking')?.choices ?? [];
    const typed = offered.map(({ set }) => parseQuantity(set.value ?? '', unit));
    expect(part.capacitance ?? part.value).toBeUndefined();
    expect(typed.map((one) => one.ok && one.value.typ)).toEqual(
      values.map((value) => expect.closeTo(value, 12)),
    );
  });
});

describe('letters of parts that have no value of their own', () => {
  test.each<Partial<Line>>([
    { designators: 'LP1', marking: '#47 6.3V 150mA' },
    { designators: 'PL2', marking: '#47' },
    { designators: 'F1', marking: 'F03A250V5AS' },
    { designators: 'F2', marking: '1A 3AG' },
    { designators: 'Q1', marking: 'C1583' },
    { designators: 'IC5', marking: 'M5218L' },
    { designators: 'RL1', marking: '12V' },
    { designators: 'TR1', marking: '220V/2x18V 3A' },
  ])('no capacitor is asked for at %o', (said) => {
    const { part, asks } = read(said);
    expect(part.kind).not.toBe('capacitor');
    expect(asks).toEqual([]);
  });

  test.each<[Partial<Line>, string]>([
    [{ designators: 'IC4', marking: 'uPC1252H2' }, 'ic'],
    [{ designators: 'SW1', marking: 'DPDT' }, 'switch'],
    [{ designators: 'S1', marking: 'DPST toggle' }, 'switch'],
    [{ designators: 'RL2', marking: '24V DPDT relay' }, 'relay'],
    [{ designators: 'SW2', marking: '3 pos rotary' }, 'switch'],
    [{ designators: 'R3', marking: '500K vol w/ switch' }, 'pot'],
    [{ designators: 'R8', marking: '2k2', note: 'volume pot' }, 'pot'],
    [{ designators: 'R9', marking: '2k2', note: 'feeds the volume pot' }, 'resistor'],
    [{ designators: 'RV2', marking: '10k ten turn' }, 'pot'],
    [{ designators: 'TR2', marking: '500R multiturn' }, 'trimmer'],
    // A value that is surely one outweighs the letters.
    [{ designators: 'T1', marking: '100nF 63V' }, 'capacitor'],
  ])('%o is a %s', (said, kind) => {
    expect(read(said).part.kind).toBe(kind);
  });

  test.each<[Partial<Line>, number]>([
    [{ designators: 'P2', marking: '100kB fine' }, 100e3],
    [{ designators: 'P2', marking: '47k B stereo' }, 47e3],
    [{ designators: 'R3', marking: '500K vol w/ switch' }, 500e3],
  ])('the value of %o is not asked', (said, ohms) => {
    const { part, asks } = read(said);
    expect(part.value?.typ).toBe(ohms);
    expect(asks.map(({ about }) => about)).not.toContain('marking');
  });
});
