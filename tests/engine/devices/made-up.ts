import { loadCatalogue } from '../../../src/catalogue/index.ts';
import type { Catalogue } from '../../../src/engine/index.ts';
import type { DeviceFigureRow, DeviceRow, PinRow } from '../../../src/schemas/devices.ts';

/** Made-up devices with figures and pins in round numbers, to be worked by hand. */

const real = loadCatalogue();
const [deviceRow] = real.devices.devices;
const [useRow] = real.devices.uses;
const [figureRow] = real.devices.figures;
const [pinRow] = real.devices.pins;
const [demandRow] = real.devices.demands;
const [findingRow] = real.devices.findings;
const [conditionRow] = real.devices.conditions;
if (!deviceRow || !useRow || !figureRow || !pinRow || !demandRow || !findingRow || !conditionRow)
  throw new Error('no rows to start from');

type Demand = typeof demandRow;
type Finding = typeof findingRow;
type Condition = typeof conditionRow;

/** Columns of a row that a test says; the others are whatever the first real row has. */
type Some<Row> = { [Column in keyof Row]?: Row[Column] | undefined };

export const device = (id: string, said: Some<DeviceRow> = {}): DeviceRow =>
  ({
    ...deviceRow,
    id,
    name: id.toUpperCase(),
    function: 'made-up',
    series: [],
    pinouts: [],
    usual_in: [],
    market: 'common',
    ...said,
  }) as DeviceRow;

export const use = { ...useRow, id: 'here', functions: ['made-up'] };

/** A figure in volts, published, of no one's but the test's. */
export const figure = (
  of: string,
  property: string,
  said: Some<DeviceFigureRow>,
): DeviceFigureRow =>
  ({
    ...figureRow,
    of,
    property,
    at: undefined,
    min: undefined,
    typ: undefined,
    max: undefined,
    unit: 'V',
    use: 'used',
    basis: 'published',
    source: `sheet-of-${of}`,
    ...said,
  }) as DeviceFigureRow;

export const pin = (pinout: string, number: number, does: string, section = ''): PinRow => ({
  ...pinRow,
  pinout,
  pin: number,
  function: does,
  section,
  basis: 'published',
  source: `sheet-of-${pinout}`,
});

export const demand = (finding: string, said: Some<Demand> = {}): Demand =>
  ({
    ...demandRow,
    id: `asks-${finding}`,
    position: 'here',
    finding,
    weight: 'hard',
    limit: undefined,
    limit_high: undefined,
    limit_of: '',
    source: 'guide',
    ...said,
  }) as Demand;

export const finding = (id: string, said: Some<Finding> = {}): Finding =>
  ({ ...findingRow, id, unit: 'x', better: 'low', graded: true, sum: '', ...said }) as Finding;

export const condition = (id: string, typ: number, said: Some<Condition> = {}): Condition =>
  ({
    ...conditionRow,
    position: 'here',
    condition: id,
    min: undefined,
    typ,
    max: undefined,
    follows: '',
    ...said,
  }) as Condition;

/** The real tables, with some of those about devices made up. */
export const catalogueWith = (devices: Partial<Catalogue['devices']>): Catalogue => ({
  ...real,
  devices: { ...real.devices, ...devices },
});
