import { describe, expect, test } from 'vitest';
import { answered } from './answered.ts';

describe('coupling with nothing said of its load keeps the value, as everybody fits it', () => {
  test.each([
    ['al-electrolytic-wet', 'c=10u&v=25', '10 µF ±20 % 25 V'],
    ['al-electrolytic-wet', 'c=100u&v=25', '100 µF ±20 % 25 V'],
    ['al-electrolytic-bipolar', 'c=4.7u&v=50', '4.7 µF ±20 % 50 V'],
    ['ta-mno2-solid', 'c=1u&v=35', '1 µF ±10 % 63 V'],
    ['pet-metallized', 'c=100n&v=100', '100 nF '],
  ])('%s of %s', (type, address, part) => {
    expect(answered(type, 'interstage-coupling', address)).toContain(`such as ${part}`);
  });
});

test('63 V in a phantom supply of 48 V is what is usual, and no condition', () => {
  expect(answered('al-electrolytic-wet', 'phantom-blocking', 'c=47u&v=63')).toContain(
    'fits, such as 47 µF ±20 % 63 V',
  );
});

describe('a preset of a usual value has a stand-in of that value, however large it is', () => {
  test.each([
    ['bias-trim', '470', '500 Ω'],
    // 5 mA, as in a chain of some hundred ohms, would be 500 V across these.
    ['bias-trim', '100k', '100 kΩ'],
    ['gain-trim', '1M', '1 MΩ'],
    ['scale-trim', '2.2M', '2 MΩ'],
    ['offset-trim', '25k', '25 kΩ'],
  ])('%s of %s: %s', (position, value, part) => {
    expect(answered('carbon-preset', position, `value=${value}`)).toContain(`such as ${part} `);
    expect(answered('cermet-preset', position, `value=${value}`)).toContain(
      `Single-turn cermet fits, such as ${part} `,
    );
  });
});

describe('what old sets have is offered as it is made', () => {
  test.each([
    // A run capacitor is of the old value and of no less than the old alternating voltage.
    [
      'pp-motor-run',
      'motor-run',
      'c=3.3u&v=450VAC',
      'Motor-run film fits, such as 3.15 µF ±5 % 450 V AC',
    ],
    [
      'pp-motor-run',
      'motor-run',
      'c=4u&v=450VAC',
      'Motor-run film fits, such as 4 µF ±5 % 450 V AC',
    ],
    [
      'pp-motor-run',
      'motor-run',
      'c=4u&v=400VAC',
      'Motor-run film fits, such as 4 µF ±5 % 400 V AC',
    ],
    [
      'paper-oil',
      'motor-run',
      'c=2.2u&v=400VAC',
      'Motor-run film fits, such as 2.2 µF ±5 % 400 V AC',
    ],
    // Round values of old sets are still listed in mica, and twelve of a decade in C0G of 500 V.
    ['silvered-mica', 'tone-stack', 'c=250p&v=500', 'Silver mica fits, such as 250 pF ±5 % 500 V'],
    ['silvered-mica', 'rf-tuned-circuit', 'c=390p&v=500', 'so do C0G (NP0) ceramic and'],
    // Kilovolts: the reservoir of an oscilloscope, and that of a picture tube.
    ['paper-oil', 'reservoir', 'c=100n&v=3000', 'Polypropylene foil, such as 100 nF ±5 % 4 kV'],
    ['ceramic-disc-unknown', 'reservoir', 'c=470p&v=20000', 'Z5U ceramic fits, such as '],
  ])('%s in %s, %s', (type, position, address, part) => {
    expect(answered(type, position, address)).toContain(part);
  });
});

describe('what was made to compensate is replaced by its like, or the circuit drifts', () => {
  test.each([
    // Violet N750 beside a coil: neither C0G nor mica balances what it balanced.
    ['c=33p&v=500', /^Temperature-compensating ceramic, such as 33 pF ±5 % 500 V, fits if/],
    // Orange N150, so near to C0G that a span of 30 K makes 0.45 % of it.
    ['c=33p&v=500&tc-old=-150', /^C0G \(NP0\) ceramic fits/],
  ])('%s', (address, wanted) => {
    expect(answered('ceramic-class1-other', 'rf-tuned-circuit', address)).toMatch(wanted);
  });
});

describe('a spark suppressor', () => {
  test.each([
    // The mains stands across it while the set is off: only what is approved may.
    [
      'paper-x-safety',
      'switch-suppressor',
      'c=100n&v=250VAC',
      /^X2 film fits, such as 100 nF .* AC/,
    ],
    ['ceramic-disc-unknown', 'switch-suppressor', 'c=10n&v=1000', /^X2 film fits/],
    // At a relay of 24 V, once a second, hardly any current flows in it on average.
    [
      'pet-metallized',
      'snubber',
      'c=100n&v=250&vac=0&vdc=24&v-surge=150&f-work=1',
      /^Metallized polypropylene fits, such as 100 nF/,
    ],
  ])('%s in %s, %s', (type, position, address, wanted) => {
    expect(answered(type, position, address)).toMatch(wanted);
  });
});

test('a wound surge resistor before a rectifier is replaced by its like of the same watts', () => {
  expect(answered('wirewound', 'inrush-limiter', 'value=22&rating=5')).toMatch(
    /^Wirewound fits, such as 22 Ω ±5 % 5 W/,
  );
});

describe('ratings and values as people type them', () => {
  test.each([
    [
      'carbon-composition',
      'plate-load',
      'value=100k&rating=1/2W',
      'Metal film fits, such as 100 kΩ ±1 % 0.5 W',
    ],
    [
      'carbon-composition',
      'plate-load',
      'value=100кОм&rating=0,5Вт',
      'Metal film fits, such as 100 kΩ ±1 % 0.5 W',
    ],
    ['metallized-paper', 'interstage-coupling', 'c=0,1мкФ&v=250В', 'fits, such as 100 nF '],
  ])('%s in %s, %s', (type, position, address, wanted) => {
    expect(answered(type, position, address)).toContain(wanted);
  });
});

describe('a string of kilovolts takes bodies that are made for them', () => {
  test.each([
    // By the sheet a body of 0.25, 0.5 and 1 W stands 1.6, 3.5 and 10 kV.
    [
      'value=10M&rating=1&vdc=2000&v-surge=2500&v-fault=2500',
      'High-voltage glaze fits, such as 10 MΩ',
    ],
    [
      'value=47M&rating=1&vdc=5000&v-surge=6000&v-fault=6000',
      'High-voltage glaze fits, such as 47 MΩ ±5 % 1 W',
    ],
    [
      'value=47M&rating=1&vdc=12k&v-surge=12k&v-fault=12k',
      'No part made today fits here as it stands.',
    ],
  ])('%s', (address, wanted) => {
    expect(answered('carbon-composition', 'hv-dropper', address)).toContain(wanted);
  });
});

describe('hundreds of megohm, as at the capsule of a condenser microphone', () => {
  // By offers.csv glaze is sold up to 68 MΩ at 5 % in E24, and in small bodies up to 1 GΩ, usually at 10 %.
  test.each([
    ['value=68M', 'High-voltage glaze fits, such as 68 MΩ'],
    ['value=100M', 'High-voltage glaze fits, such as 100 MΩ ±10 % 0.25 W'],
    ['value=1G', 'High-voltage glaze fits, such as 1 GΩ ±10 % 0.25 W'],
    ['value=10G', 'No part made today fits'],
  ])('%s', (address, wanted) => {
    expect(answered('carbon-film', 'grid-leak', address)).toContain(wanted);
  });
});

describe('what one orders for electrolytics of old values', () => {
  // The next of E6 on the shelf: rather more than less on a rail, 22 for 25 where an eighth decides nothing.
  test.each([
    ['bulk-rail', 'c=8u&v=350', 'Aluminium electrolytic fits, such as 10 µF ±20 % 350 V'],
    ['bulk-rail', 'c=500u&v=25', 'Aluminium electrolytic fits, such as 470 µF ±20 % 25 V'],
    ['reservoir', 'c=2500u&v=50', 'Aluminium electrolytic fits, such as 2200 µF ±20 % 50 V'],
    ['reservoir', 'c=8u&v=450', 'Aluminium electrolytic fits, such as 10 µF ±20 % 450 V'],
    ['cathode-bypass', 'c=25u&v=25', 'Aluminium electrolytic fits, such as 22 µF ±20 % 25 V'],
    ['reservoir', 'c=100000u&v=25', 'Aluminium electrolytic fits, such as 0.1 F ±20 % 40 V'],
    // A level meter lets its reading fall by a resistor: what creeps back shows in no needle.
    ['peak-detector', 'c=10u&v=16', 'Aluminium electrolytic, such as 10 µF ±20 % 16 V, fits if'],
  ])('%s, %s', (position, address, answer) => {
    expect(answered('al-electrolytic-wet', position, address)).toContain(answer);
  });
});

describe('dividers by ten, and shunts', () => {
  // By offers.csv the nines are kept at 0.1 % beside E96, and low values at 1 % to sense current with.
  test.each([
    ['metal-film', 'value=9k&tol=0.5', 'Metal film fits, such as 9 kΩ ±0.1 % 0.25 W'],
    ['metal-film', 'value=90k&tol=0.5', 'Metal film fits, such as 90 kΩ ±0.1 % 0.25 W'],
    ['metal-film', 'value=9M&tol=1', 'Metal film, such as 9 MΩ ±1 % 0.5 W, fits if'],
    // Two volts and a quarter put a fifth of a quarter watt into 100 ohm.
    ['metal-film', 'value=100&tol=0.1', 'Metal film fits, such as 100 Ω ±0.1 % 0.25 W'],
    ['wirewound', 'value=0.1&rating=1', 'Wirewound, such as 0.1 Ω ±1 % 1 W, fits if'],
  ])('%s, %s', (type, address, wanted) => {
    expect(answered(type, 'precision-divider', address)).toContain(wanted);
  });
});

describe('what to keep out is what somebody may reach for', () => {
  // A bead is made up to 50 V, and 48 V stand there at the most; niobium for 6 V nobody takes for a rail of
  // 18 V, nor 1 µF for 100 nF.
  test.each([
    [
      'al-electrolytic-wet',
      'phantom-blocking',
      '',
      ' Keep solid tantalum out: made for 35 V at most in such a value, and 149 % of that may stand',
    ],
    // A ceramic that is not made for the voltage says nothing against ceramics in place of film.
    ['pet-metallized', 'screen-bypass', '', ''],
    ['pet-metallized', 'cathode-bypass', 'c=10u&v=100', ''],
    ['ceramic-disc-unknown', 'mains-y', '', ' out: the place asks for approval as Y1 or Y2'],
    ['al-electrolytic-wet', 'bulk-rail', 'c=47u&v=25', ''],
    ['pet-metallized', 'spring-reverb-driver', '', ''],
    ['al-electrolytic-wet', 'reservoir', 'c=32u&v=450', ''],
  ])('%s in %s, %s', (type, position, address, warning) => {
    const sentence = answered(type, position, address);
    if (warning === '') expect(sentence).not.toContain('Keep');
    else expect(sentence).toContain(warning);
  });
});

describe('a motor starts on a part of its own kind', () => {
  // As many volts AC as before, of the value that the span begins with, and no run part, which is too small.
  test.each([
    [
      'motor-start',
      'c=88u&v=125',
      'Motor-start electrolytic fits, such as 88 µF +20 %/−0 % 125 V AC',
    ],
    [
      'motor-start',
      'c=60u&v=330',
      'Motor-start electrolytic fits, such as 60 µF +20 %/−0 % 330 V AC',
    ],
    [
      'motor-start',
      'c=100u&v=250',
      'Motor-start electrolytic fits, such as 100 µF +20 %/−0 % 250 V AC',
    ],
    ['motor-run', 'c=25u&v=250', 'Motor-run film fits, such as 25 µF ±5 % 400 V AC'],
  ])('%s, %s', (position, address, answer) => {
    expect(answered('al-motor-start', position, address)).toContain(answer);
  });
});

describe('high power', () => {
  test.each([
    // 44 A at 10 MHz: 2π × 10 MHz × 1 nF × 700 V, in the tank of a transmitter.
    ['mica-clamped', 'rf-tuned-circuit', 'c=1n&v=2500&vac=700', /^No part made today fits/],
    ['silvered-mica', 'rf-tuned-circuit', 'c=100p&v=500', /^Silver mica fits, such as 100 pF/],
    // By the notes of the position parts of 1.6 or 2 kV stand at a line-output transistor.
    ['pet-film-foil', 'flyback-pulse', 'c=10n&v=1500', /^Polypropylene foil .* 10 nF ±5 % 1\.6 kV/],
    [
      'pp-film-foil',
      'flyback-pulse',
      'c=470n&v=400&v-surge=250&vac=50',
      /^Polypropylene foil .* 470 nF ±5 % 400 V/,
    ],
    // Film of 1.1 kV for oil and paper of 1 kV, as one part.
    [
      'paper-oil',
      'reservoir',
      'c=8u&v=1000',
      /^Metallized polypropylene fits, such as 10 µF ±5 % 1\.1 kV/,
    ],
  ])('%s in %s, %s', (type, position, address, wanted) => {
    expect(answered(type, position, address)).toMatch(wanted);
  });
});

describe('a rail whose voltage somebody said needs no more than that, as far as no valves are near', () => {
  test.each([
    // Half the rating for a bead: 10 V on a rail of 5 V.
    ['ta-mno2-solid', 'local-decoupling', 'c=10u&v=10&vdc=5', '10 µF ±10 % 10 V'],
    ['ta-mno2-solid', 'regulator-output', 'c=10u&v=35&vdc=5', '10 µF ±10 % 10 V'],
    ['al-electrolytic-wet', 'output-coupling', 'c=1000u&v=50&vdc=12', '1000 µF ±20 % 25 V'],
    ['al-electrolytic-wet', 'bulk-rail', 'c=33u&v=450&vdc=250', '33 µF ±20 % 400 V'],
  ])('%s in %s, %s', (type, position, address, part) => {
    expect(answered(type, position, address)).toContain(`such as ${part}`);
  });
});

describe('what small beads and electrolytics give way to, and larger ones do not', () => {
  test.each([
    // Film as small as a bead does not fail as a short.
    ['ta-mno2-solid', 'interstage-coupling', 'c=100n', /^Metallized polypropylene fits/],
    ['ta-mno2-solid', 'reset-delay', 'c=1u', /^Metallized polyester fits/],
    // Beside a chip it is the multilayer that one reaches for, save for an electrolytic that is large.
    ['ta-mno2-solid', 'local-decoupling', 'c=100n', /^X7R ceramic fits/],
    ['al-electrolytic-wet', 'local-decoupling', 'c=1u', /^X7R ceramic fits/],
    ['al-electrolytic-wet', 'local-decoupling', 'c=10u', /^Aluminium electrolytic fits/],
    ['ta-mno2-solid', 'local-decoupling', 'c=10u', /^Solid tantalum fits/],
    // What somebody asks who names no value: an electrolytic between stages is of some microfarads.
    ['al-electrolytic-wet', 'interstage-coupling', '', /10 µF ±20 % /],
    ['al-electrolytic-wet', 'agc-bypass', '', /10 µF ±/],
  ])('%s in %s, %s', (type, position, address, wanted) => {
    expect(answered(type, position, address)).toMatch(wanted);
  });
});

describe('a chip that fits is named with what has leads', () => {
  test.each([
    [
      'pc-metallized',
      'vco-timing',
      'c=1u&v=63',
      /^PPS film fits, .* It is a chip; with leads metallized polypropylene, such as 1 µF ±5 % \d+ V, fits if/,
    ],
    // Polymer tantalum is sold in chips alone, so the old part was one; nor where leads fit as well.
    ['ta-polymer', 'bulk-rail', '', /^(?!.*It is a chip)/],
    ['pc-metallized', 'active-filter', 'c=10n', /^(?!.*It is a chip)/],
    // Polycarbonate of that value is large enough to leave room for a part with leads.
    ['pc-metallized', 'integrator', 'c=1u&v=63', /^Metallized polypropylene fits,/],
  ])('%s in %s, %s', (type, position, address, wanted) => {
    expect(answered(type, position, address)).toMatch(wanted);
  });
});

describe('where edges and pulses stand, the mark of the old part tells what it bears', () => {
  test.each([
    [
      'pp-film-foil',
      'snubber',
      'c=4.7n&v=1000',
      'Polypropylene foil fits, such as 4.7 nF ±5 % 1 kV',
    ],
    ['ceramic-disc-unknown', 'snubber', 'c=4.7n&v=1000', 'such as 4.7 nF ±5 % 1 kV'],
    // Foil of that value has thirty times the body; of metallized film 400 V bear the edge.
    ['pet-metallized', 'snubber', 'c=100n&v=100', 'such as 100 nF ±5 % 400 V'],
    ['pp-film-foil', 'snubber', 'c=100n&v=160', 'fits, such as 100 nF ±5 % 160 V'],
    ['pet-metallized', 'snubber', '', 'such as 10 nF ±5 % 400 V'],
    ['pp-film-foil', 'flyback-pulse', 'c=8.2n&v=1600', 'such as 8.2 nF ±5 % 1.6 kV'],
    // In series with the deflection coil, far below the retrace pulse.
    ['pp-film-foil', 'flyback-pulse', 'c=470n&v=250', 'such as 470 nF ±5 % 400 V'],
    ['pp-film-foil', 'flyback-pulse', '', 'such as 10 nF ±5 % 1.6 kV'],
  ])('%s in %s, %s', (type, position, address, wanted) => {
    expect(answered(type, position, address)).toContain(wanted);
  });
});

describe('what was made for kilovolts is replaced by its like', () => {
  test.each([
    ['high-voltage-glaze', 'value=470k', 'High-voltage glaze fits, such as 470 kΩ'],
    ['high-voltage-glaze', 'value=10M', 'High-voltage glaze fits, such as 10 MΩ'],
    ['carbon-composition', 'value=470k', 'Carbon film fits, such as 470 kΩ ±5 % 1 W'],
  ])('%s as a dropper, %s', (type, address, wanted) => {
    expect(answered(type, 'hv-dropper', address)).toContain(wanted);
  });
});

describe('a crossover keeps its value and its level', () => {
  test.each([
    // Whole microfarads are sold for crossovers.
    ['al-electrolytic-bipolar', 'c=8u&v=50', /^Bipolar electrolytic fits, such as 8 µF ±10 % 50 V/],
    ['al-electrolytic-bipolar', 'c=72u&v=100', /^Bipolar electrolytic fits, such as 72 µF /],
    ['paper-oil', 'c=4u&v=150', /^Metallized polypropylene fits, such as 4 µF /],
  ])('%s of %s', (type, address, wanted) => {
    expect(answered(type, 'speaker-crossover', address)).toMatch(wanted);
  });
});

describe('a resistor that hisses by its warmth alone is replaced by its like, however large it is', () => {
  test.each([
    // 4.06 µV of 47 kΩ, as across every pickup: no part of that value has less.
    ['carbon-film', 'low-noise-input', 'value=47k&rating=0.25', /^Metal film fits, such as 47 kΩ/],
    ['carbon-film', 'low-noise-input', 'value=1M&rating=0.25', /^Metal film fits, such as 1 MΩ/],
    ['metal-film', 'gain-resistor', 'value=470k&rating=0.25', /^Metal film fits, such as 470 kΩ/],
  ])('%s in %s, %s', (type, position, address, wanted) => {
    expect(answered(type, position, address)).toMatch(wanted);
  });
});
