import type { Catalogue } from '../../engine/catalogue.ts';
import { eachWithout, NOTED, nothing, pick, RULES_OF_SURENESS, without } from './slice-pieces.ts';

/** The part of the catalogue that assessments of one family of devices need. */
export const sliceDevices = (catalogue: Catalogue, family: string): Catalogue => {
  const { devices } = catalogue;
  const own = devices.devices.filter((device) => device.family === family);
  const owners = new Set(own.flatMap((device) => [device.id, ...device.series]));
  const orders = new Set(own.flatMap((device) => device.pinouts));
  const functions = new Set(own.map((device) => device.function));
  const uses = devices.uses.filter((use) => use.functions.some((one) => functions.has(one)));
  const ofUse = ({ position }: { position: string }): boolean =>
    uses.some(({ id }) => id === position);
  const figures = devices.figures.filter((row) => owners.has(row.of) && row.use === 'used');
  const pins = devices.pins.filter((row) => orders.has(row.pinout));
  const demands = devices.demands.filter(ofUse);
  const asked = new Set(demands.map(({ finding }) => finding));
  const cited = new Set([...figures, ...pins, ...demands].map((row) => row.source));
  return {
    ...nothing(catalogue),
    units: catalogue.units,
    verdictRules: catalogue.verdictRules,
    rulesOfThumb: pick(catalogue.rulesOfThumb, [...RULES_OF_SURENESS, 'junction-doubling']),
    sources: eachWithout(pick(catalogue.sources, cited), ['publisher', 'url']),
    devices: {
      ...devices,
      devices: own.map((row) => without(row, NOTED)),
      figures: figures.map((row) => without(row, [...NOTED, 'conditions'])),
      pinouts: devices.pinouts.filter(({ id }) => orders.has(id)),
      pins: pins.map((row) => without(row, NOTED)),
      uses,
      findings: devices.findings.filter(({ id }) => asked.has(id)),
      conditions: devices.conditions.filter(ofUse),
      demands: demands.map((row) => without(row, NOTED)),
      affixes: [],
      besideWords: [],
      numberSystems: [],
      knownNumbers: [],
    },
  };
};
