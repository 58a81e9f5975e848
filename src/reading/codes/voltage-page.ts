import { link } from '../../components/link.ts';
import { formatQuantity, formatValue, type Catalogue, type Range } from '../../engine/index.ts';
import { readVoltageCode } from '../../engine/markings/index.ts';
import { h, type Markup } from '../../markup/node.ts';
import { codePath, type ListedCode } from './listed.ts';
import { chips } from '../chips.ts';
import { mark, sourceLink, table, type CodePage } from './page.ts';
import { rivalsSection } from './rivals.ts';

const volts = (range: Range): string => formatQuantity(range, 'V');

/** The rated voltage that a code first says, V. */
const codeVolts = (catalogue: Catalogue, code: string): number =>
  readVoltageCode(catalogue.markings, code)[0]?.volts.typ ?? NaN;

/** The same voltage in the other codes. */
const otherCodes = ({ markings }: Catalogue, own: string, value: number): Markup[][] => {
  const where = new Map(markings.voltageSchemes.map((row) => [row.id, row.where]));
  return markings.voltageCodes
    .filter((row) => row.code !== own && row.volts_min === value && row.volts_max === value)
    .map((row) => ({ ...row, where: where.get(row.scheme) ?? '' }))
    .filter((row) => row.where !== '')
    .map((row) => [mark(row.code), row.where, sourceLink(row.source)]);
};

const EXAMPLES = [
  { value: '473', says: '47 nF' },
  { value: '104', says: '100 nF' },
  { value: '222', says: '2.2 nF' },
];

const examples = (code: string, value: number): Markup =>
  table(
    `Marks with ${code}`,
    ['Marking', 'Means'],
    EXAMPLES.flatMap(({ value: figures, says }) => [
      [
        mark(`${code}${figures}J`),
        `${says} ±5\u00a0%, ${formatValue(value, 'V')}`.replace(' nF', '\u00a0nF'),
      ],
      [
        mark(`${figures}K ${code}`),
        `${says} ±10\u00a0%, ${formatValue(value, 'V')}`.replace(' nF', '\u00a0nF'),
      ],
    ]),
  );

/** Types that are made for such a voltage today. */
const typeLinks = (catalogue: Catalogue, value: number): Markup[] => {
  const types = new Set(
    catalogue.offers.filter((row) => row.voltages.includes(value)).map((row) => row.type),
  );
  return [...types].map((id) =>
    link(`/replace/${id}/?v=${value}`, catalogue.types[id]?.short_name ?? id),
  );
};

/** The page of a voltage code such as 2A. */
export const voltagePage = (
  catalogue: Catalogue,
  own: ListedCode,
  codes: readonly ListedCode[],
): CodePage => {
  const { code } = own;
  const [first, ...rest] = readVoltageCode(catalogue.markings, code);
  const value = first?.volts.typ ?? NaN;
  const said = formatValue(value, 'V');
  const voltages = codes.filter(({ kind }) => kind === 'voltage');
  const at = voltages.indexOf(own);
  const near = [voltages[at - 1], voltages[at + 1]]
    .concat(
      voltages.filter(({ code: other }) => other !== code && other.slice(1) === code.slice(1)),
    )
    .filter((one) => one !== undefined);
  const others = otherCodes(catalogue, code, value);
  const types = typeLinks(catalogue, value);
  return {
    title: `${code} on a capacitor: ${said}`,
    answer: `${code} is a rated voltage of ${said} DC.`,
    more: [
      ...rest.map(
        ({ volts: other, use }) => `${use === 'rare' ? 'Seldom' : 'Also'} ${volts(other)}.`,
      ),
      'It stands before the value, as in 2A474J, or behind it.',
    ],
    sections: [
      { id: 'marks', title: 'As it is met', content: [examples(code, value)] },
      ...rivalsSection(catalogue, code),
      ...(others.length === 0
        ? []
        : [
            {
              id: 'others',
              title: `Other codes for ${said}`,
              content: [
                table(`Other codes for ${said}`, ['Code', 'Where it stands', 'Source'], others),
              ],
            },
          ]),
      ...(types.length === 0
        ? []
        : [
            {
              id: 'stand-ins',
              title: `Types made for ${said} today`,
              content: [chips(types)],
            },
          ]),
      {
        id: 'near',
        title: 'Codes near it',
        content: [
          chips(
            [...new Set(near)].map((one) =>
              link(
                codePath(one),
                `${one.code}: ${formatValue(codeVolts(catalogue, one.code), 'V')}`,
              ),
            ),
          ),
          h('p', {}, link('/read/voltage-codes/', 'All voltage codes'), ', each with its source.'),
        ],
      },
    ],
  };
};
