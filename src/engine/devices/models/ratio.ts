import { formatQuantity, type Unit } from '../../quantities/index.ts';
import { exactly, overPositive } from '../../quantities/range.ts';
import { deviceKnowledge, figuresFor, restingOn } from '../known.ts';
import type { DeviceModel } from '../model.ts';

/** A property as a multiple of the old part's; the old part against itself is one. */
const ratioToOld = (property: string, unit: Unit): DeviceModel => ({
  measure: (device, { catalogue, original }) => {
    const [own, old] = [device, original].map((one) => deviceKnowledge(catalogue, one, property));
    if (own === undefined || old === undefined) return { status: 'unknown', missing: [property] };
    // Another of the same number is compared by its spread, not by its name.
    const value = overPositive(own.range, exactly(old.range.typ));
    return { status: 'known', value, properties: [property], ...restingOn([own, old]) };
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
export const sameCurrent = ratioToOld('forward-current', 'A');
export const sameCollectorCurrent = ratioToOld('current-max', 'A');
export const samePower = ratioToOld('power-max', 'W');
export const sameLoad = ratioToOld('load-max', 'A');
export const sameDropout = ratioToOld('dropout', 'V');
export const sameTransconductance = ratioToOld('transconductance', 'S');

const idss = ratioToOld('idss', 'A');

/** Where a sheet promises only the least, a part may lie anywhere above it. */
export const sameIdss: DeviceModel = {
  ...idss,
  measure: (device, circumstances) => {
    const rows = figuresFor(circumstances.catalogue, device, 'idss');
    const hasEnd = rows.some(({ typ, max }) => typ !== undefined || max !== undefined);
    return hasEnd ? idss.measure(device, circumstances) : { status: 'unknown', missing: ['idss'] };
  },
};

/** Nominal outputs are compared, since the spread of both is the same. */
export const sameOutput: DeviceModel = {
  ...ratioToOld('output-voltage', 'V'),
  measure: (device, circumstances) => {
    const outcome = ratioToOld('output-voltage', 'V').measure(device, circumstances);
    return outcome.status === 'known' ? { ...outcome, value: exactly(outcome.value.typ) } : outcome;
  },
};
