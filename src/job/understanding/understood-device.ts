import { usesOf, type Catalogue } from '../../engine/index.ts';
import type { DeviceRow } from '../../schemas/devices.ts';
import { devicesCalled, devicesLike, runsOf } from '../../search/devices.ts';
import { knownNumber } from '../../search/known-numbers.ts';
import { typeNumberIn } from '../../search/type-number.ts';
import { saidAmong } from '../../search/said-names.ts';
import type { Line } from '../model/job.ts';
import { wordsBeside } from './ask-capacitor.ts';
import type { Ask } from './ask.ts';
import { atDesignators, type PartOfLine } from './part-of-line.ts';

/** Families of devices that a parts list puts under a kind; none for kinds that no numbers serve. */
export const familiesOf = ({ devices }: Catalogue, kind: string): ReadonlySet<string> =>
  new Set(devices.families.filter(({ kinds }) => kinds.includes(kind)).map(({ id }) => id));

/** Devices that one question may offer. */
const MOST_CHOICES = 8;

interface Meant {
  devices: DeviceRow[];
  /** Whether the line calls them so, rather than in part or worn. */
  called: boolean;
}

/** Devices that a line may mean: the one that it names, else those that its marking is called. */
const devicesOf = (
  catalogue: Catalogue,
  families: ReadonlySet<string>,
  { type, marking, value }: Line,
): Meant => {
  const all = catalogue.devices.devices.filter(({ family }) => families.has(family));
  const named = all.find(({ id }) => id === type);
  if (named !== undefined) return { devices: [named], called: true };
  // The list's own word for it comes before what is printed, that before the column of values.
  const texts = [type, marking, value];
  for (const text of texts) {
    const found = devicesCalled(catalogue, runsOf(text));
    const own = found.filter((row) => all.includes(row));
    if (own.length > 0) return { devices: own, called: true };
  }
  for (const text of texts) {
    const own = devicesLike(catalogue, text).filter((row) => all.includes(row));
    if (own.length > 0 && own.length <= MOST_CHOICES) return { devices: own, called: false };
  }
  return { devices: [], called: false };
};

const askType = (line: Line, { devices, called }: Meant): Ask[] => {
  if (devices.length < (called ? 2 : 1)) return [];
  const text = line.type || line.marking || line.value;
  const choices = devices.map(({ id, name }) => ({ label: name, set: { type: id } }));
  const question =
    devices.length === 1
      ? `“${text}” may be this one. Is it?`
      : `“${text}” may be any of these. Which is it?`;
  return [{ about: 'type', question, choices }];
};

/** The number without figures that a line bears, where its device was chosen to be judged in its place. */
const judgedFor = (
  catalogue: Catalogue,
  { id }: DeviceRow,
  { type, marking, value }: Line,
): string | undefined => {
  if (type !== id) return undefined;
  const known = [marking, value].map((text) => knownNumber(catalogue, text)).find(Boolean);
  return known?.near.includes(id) === true ? `${known.number}, ${known.what}` : undefined;
};

/** What is known of a number without figures, and by which devices it might be judged. */
const askNear = (
  catalogue: Catalogue,
  families: ReadonlySet<string>,
  { type, marking, value }: Line,
): Ask[] => {
  const known = [type, marking, value].map((text) => knownNumber(catalogue, text)).find(Boolean);
  if (known === undefined) return [];
  const near = catalogue.devices.devices.filter(
    ({ id, family }) => known.near.includes(id) && families.has(family),
  );
  if (near.length === 0) return [];
  const question =
    `${known.number} is ${known.what}; there are no figures of it here. ` +
    `${known.look_out === '' ? '' : `${known.look_out} `}Judge it as if it were ${near.length === 1 ? 'this one' : 'one of these'}?`;
  const choices = near.map(({ id, name }) => ({ label: name, set: { type: id } }));
  return [{ about: 'type', question, choices }];
};

/** What is known of the number that a line bears, where nothing here assesses such a part. */
export const knownOf = (
  catalogue: Catalogue,
  { type, marking, value }: Line,
): PartOfLine['known'] => {
  // A count or a word may stand beside it, as in `2x OC72`.
  const known = [type, marking, value]
    .flatMap((text) => [knownNumber(catalogue, text), typeNumberIn(catalogue, text, [])?.known[0]])
    .find(Boolean);
  if (known === undefined) return undefined;
  return { what: `${known.number} is ${known.what}`, lookOut: known.look_out };
};

const askUse = (catalogue: Catalogue, device: DeviceRow, line: Line): Ask[] => {
  const { position, note } = line;
  const usual = usesOf(catalogue, device);
  if (usual.some(({ id }) => id === position)) return [];
  const uses = new Set([...saidAmong(usual, `${wordsBeside(line)}, ${note}`), ...usual]);
  return [
    {
      about: 'position',
      question:
        position === ''
          ? `What is the ${device.name} used for?`
          : `“${position}” is no use of the ${device.name} that is known here. What is it used for?`,
      choices: [...uses].map(({ id, name }) => ({ label: name, set: { position: id } })),
    },
  ];
};

/**
 * What a line of a part that goes by type number means. A number that only one device is called by
 * holds; its use is only ever offered. A number that is not known leaves the part as it is typed.
 */
export const understoodDevice = (
  catalogue: Catalogue,
  families: ReadonlySet<string>,
  line: Line,
): { part: PartOfLine; asks: Ask[] } => {
  const found = devicesOf(catalogue, families, line);
  const [device] = found.called && found.devices.length === 1 ? found.devices : [];
  const { kind } = line;
  const typed = { designators: [], kind, rejected: {} };
  if (device === undefined)
    return {
      part: atDesignators(typed, line.designators),
      asks: found.devices.length > 0 ? askType(line, found) : askNear(catalogue, families, line),
    };
  const stands = judgedFor(catalogue, device, line);
  return {
    part: atDesignators(
      {
        ...typed,
        family: 'device',
        type: device.id,
        ...(stands === undefined ? {} : { judgedFor: stands }),
        position: line.position === '' ? undefined : line.position,
        slice: `devices-${device.family}`,
      },
      line.designators,
    ),
    asks: askUse(catalogue, device, line),
  };
};
