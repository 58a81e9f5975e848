import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { named } from './named.ts';

const catalogue = loadCatalogue();
const { device, verdictOf } = named(catalogue);

describe('regulators, diodes and transistors in the place of another', () => {
  it.each([
    // The negative order: 1 ground, 2 input, 3 output (rti-239); the LM317: 1 adjust (rti-240).
    ['7805', 'reg-rail', 'lm1117-5', 'pins', {}, 'keep-out'],
    ['7805', 'reg-rail', 'lm2940-5', 'pins', {}, 'fits'],
    ['7805', 'reg-rail', '7812', 'same-output', {}, 'keep-out'],
    ['7805', 'reg-rail', '7805', 'same-output', {}, 'fits'],
    // 5 V and 2 V of drop-out ask for 7 V: rti-244.
    ['7805', 'reg-tight', '7805', 'headroom', {}, 'stopgap'],
    ['7805', 'reg-tight', 'lm2940-5', 'headroom', {}, 'fits'],
    ['7805', 'reg-rail', 'lm2940-5', 'output-capacitor', {}, 'stopgap'],
    ['7805', 'reg-ceramic', 'lm2940-5', 'output-esr', {}, 'stopgap'],
    ['7805', 'reg-rail', 'lm2940-5', 'output-esr-most', { 'output-esr': 2 }, 'stopgap'],
    ['7805', 'reg-rail', 'lm1117-5', 'output-esr-most', { 'output-esr': 2 }, 'fits'],
    ['oc71', 'germanium-stage', 'ac128', 'leakage-share', {}, 'fits'],
    ['oc71', 'germanium-stage', 'ac128', 'leakage-share', { temperature: 60 }, 'stopgap'],
    ['lm317', 'reg-adjusted', 'lm350', 'set-output', {}, 'fits'],
    ['lm13600', 'gain-control', 'lm13700', 'control-current', {}, 'fits'],
    [
      'lm13600',
      'gain-control',
      'lm13700',
      'control-current',
      { 'control-current': 3e-3 },
      'keep-out',
    ],
    ['7905', 'reg-rail', '79m05', 'load', {}, 'fits'],
    ['7905', 'reg-rail', '79m05', 'load', { 'load-current': 0.8 }, 'keep-out'],
    // Nine times what may discharge through it: a diode has to be there; fifty times is no small matter.
    ['lm317', 'reg-large-capacitor', 'lm317', 'discharge', {}, 'fits-if'],
    [
      'lm317',
      'reg-large-capacitor',
      'lm317',
      'discharge',
      { 'output-capacitor': 1250e-6 },
      'stopgap',
    ],
    ['lm317', 'reg-adjusted', 'lm317', 'discharge', {}, 'fits'],
    ['1n4007', 'diode-direct', '1n4004', 'reverse', {}, 'keep-out'],
    ['1n4004', 'diode-rectifier', '1n5819', 'reverse', {}, 'keep-out'],
    ['1n5819', 'diode-switching', '1n4001', 'recovery', {}, 'keep-out'],
    ['1n5819', 'diode-switching', 'uf4007', 'recovery', {}, 'fits'],
    ['1n4007', 'diode-switching', '1n5819', 'reverse', {}, 'keep-out'],
    ['1n4007', 'diode-switching', 'uf4007', 'drop', {}, 'fits-if'],
    ['1n4007', 'diode-polarity', '1n4007', 'drop', {}, 'fits'],
    // 30 V the wrong way round on parts for 20, 40 and 50 V; on one for 20 V where nothing more was borne.
    ['1n4007', 'diode-polarity', '1n5817', 'reverse', {}, 'keep-out'],
    ['1n4007', 'diode-polarity', '1n5819', 'reverse', {}, 'fits'],
    ['1n4007', 'diode-polarity', '1n4001', 'reverse', {}, 'fits'],
    ['1n5817', 'diode-polarity', '1n5817', 'reverse', {}, 'fits'],
    // Half of the 800 V that four fifths of its rating are.
    ['1n4007', 'diode-rectifier', '1n4004', 'reverse', {}, 'keep-out'],
    ['1n4007', 'diode-rectifier', '1n4006', 'reverse', {}, 'fits'],
    ['1n5817', 'diode-polarity', '1n4007', 'drop', {}, 'stopgap'],
    ['lm2940-5', 'reg-rail', 'lm2940-5', 'output-capacitor', {}, 'fits'],
    ['7805', 'reg-rail', 'lm2940-5', 'output-capacitor', {}, 'stopgap'],
    ['lm2940-5', 'reg-rail', '7805', 'same-dropout', {}, 'fits-if'],
    ['lm2940-5', 'reg-rail', 'lm2940-5', 'same-dropout', {}, 'fits'],
    ['1n34a', 'diode-detector', '1n4148', 'drop', {}, 'stopgap'],
    ['1n34a', 'diode-detector', 'bat46', 'drop', {}, 'fits'],
    ['1n4148', 'diode-clamp', '1n5819', 'reverse-leakage', {}, 'keep-out'],
    ['1n4148', 'diode-clamp', '1n914', 'reverse-leakage', {}, 'fits'],
    ['1n4001', 'diode-rectifier', '1n4148', 'surge', {}, 'keep-out'],
    ['bc547', 'transistor-stage', '2n3904', 'pins', {}, 'stopgap'],
    ['bc547', 'transistor-stage', 'bc337', 'pins', {}, 'fits'],
    ['bc547', 'transistor-stage', 'bc337', 'pins-in-doubt', {}, 'fits-if'],
    ['bc547', 'transistor-driver', 'bc547', 'carries', { 'top-current': 0.15 }, 'keep-out'],
    // What the old one bears is all that its circuit can ask.
    ['bc547', 'transistor-driver', 'bc547', 'carries', {}, 'fits'],
    ['78l05', 'reg-rail', '78l05', 'load', {}, 'fits'],
    ['bc109', 'transistor-stage', 'bc109', 'stands', {}, 'fits'],
    ['bc109', 'transistor-stage', 'bc109', 'stands', { 'top-voltage': 24 }, 'keep-out'],
    // A smaller rating is said, since nobody has measured the load yet.
    ['1n5404', 'diode-polarity', '1n5817', 'same-current', {}, 'fits-if'],
    ['1n5404', 'diode-polarity', '1n5408', 'same-current', {}, 'fits'],
    ['7905', 'reg-rail', '79m05', 'same-load', {}, 'fits-if'],
    ['bc337', 'transistor-driver', '2n3904', 'same-collector-current', {}, 'fits-if'],
    // 5 and 20 mA at the least, and usually far more, where the old one passes 3 mA.
    ['2n5457', 'jfet-stage', 'j112', 'same-idss', {}, 'stopgap'],
    ['2n5457', 'jfet-stage', 'j111', 'same-idss', {}, 'stopgap'],
    ['2n5457', 'jfet-stage', 'mpf102', 'same-idss', {}, 'fits-if'],
  ] as const)('%s at %s: %s, %s with %o is %s', (old, at, stranger, finding, given, verdict) => {
    expect(verdictOf(old, at, stranger, finding, given)).toBe(verdict);
  });

  it('tells pin 2 of a negative regulator to be its input', () => {
    const [order] = device('7905').pinouts;
    const pin = catalogue.devices.pins.find((row) => row.pinout === order && row.pin === 2);
    expect(pin?.function).toBe('reg-input');
  });
});
