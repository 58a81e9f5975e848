import { formatQuantity, type Unit } from '../../quantities/index.ts';
import { exactly, overPositive } from '../../quantities/range.ts';
import { deviceKnowledge } from '../known.ts';
import type { DeviceModel } from '../model.ts';

/** A property as a multiple of the old part's; the old part against itself is one. */
const ratioToOld = (property: string, unit: Unit): DeviceModel => ({
  measure: (device, { catalogue, original }) => {
    const [own, old] = [device, original].map((one) => deviceKnowledge(catalogue, one, property));
    if (own === undefined || old === undefined) return { status: 'unknown', missing: [property] };
    // Another of the same number is compared by its spread, not by its name.
    const value = overPositive(own.range, exactly(old.range.typ));
    const sources = [...new Set([...own.sources, ...old.sources])];
    const bases = [own.basis, old.basis];
    return { status: 'known', value, properties: [property], sources, bases };
  },
  working: (device, { catalogue, original }) => {
    const [own, old] = [device, original].map((one) => {
      const range = deviceKnowledge(catalogue, one, property)?.range;
      return range === undefined ? 'an unknown figure' : formatQuantity(range, unit);
    });
    return `${own ?? ''} instead of ${old ?? ''}`;
  },
});

export const sameStages = ratioToOld('stages', 'number');
export const sameRows = ratioToOld('row-pitch', 'm');
export const samePitch = ratioToOld('pin-pitch', 'm');
export const sameIdss = ratioToOld('idss', 'A');
export const sameTransconductance = ratioToOld('transconductance', 'S');

/** Nominal outputs are compared, since the spread of both is the same. */
export const sameOutput: DeviceModel = {
  ...ratioToOld('output-voltage', 'V'),
  measure: (device, circumstances) => {
    const outcome = ratioToOld('output-voltage', 'V').measure(device, circumstances);
    return outcome.status === 'known' ? { ...outcome, value: exactly(outcome.value.typ) } : outcome;
  },
};
