import { formatValue, usualNumbers, type Catalogue, type Unit } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import type { ConditionDefinitionRow } from '../schemas/positions.ts';
import type { DeviceRow, UseRow } from '../schemas/devices.ts';
import { withArticle } from './answer.ts';

/** One number of a use that a visitor may change. */
export interface DeviceField {
  definition: ConditionDefinitionRow;
  unit: Unit;
  /** Its usual number here, SI. */
  usual: number;
  /** Where that comes from. */
  from: string;
}

/**
 * The numbers of a use, in the order of its rows.
 * @param old the device that is being replaced, where there is one
 */
export const deviceFields = (catalogue: Catalogue, use: UseRow, old?: DeviceRow): DeviceField[] =>
  usualNumbers(catalogue, use, old).flatMap(({ condition, range, isBorne }) => {
    const definition = catalogue.devices.conditionDefinitions.find(({ id }) => id === condition);
    const unit = definition && catalogue.units[definition.unit];
    if (definition === undefined || unit === undefined) return [];
    const from = isBorne ? `what ${withArticle(old?.name ?? '')} bears` : 'usual';
    return [{ definition, unit: unit.si as Unit, usual: range.typ, from }];
  });

const field = ({ definition, unit, usual, from }: DeviceField): Markup =>
  h(
    'p',
    { class: 'field' },
    h('label', { for: `field-${definition.id}` }, definition.name),
    h('input', {
      id: `field-${definition.id}`,
      name: definition.id,
      value: formatValue(usual, unit),
      readonly: true,
      'aria-describedby': `${definition.id}-note`,
      autocomplete: 'off',
      spellcheck: 'false',
    }),
    h('small', { id: `${definition.id}-note`, class: 'hint', 'aria-live': 'polite' }, from),
  );

/** The form of all numbers that a page rests on, which its script brings to life. */
export const deviceNumbers = (catalogue: Catalogue, old: DeviceRow, use: UseRow): Markup =>
  h(
    'form',
    {
      id: 'device-numbers',
      class: 'numbers',
      'data-device': old.id,
      'data-use': use.id,
      'data-family': old.family,
      novalidate: true,
    },
    h(
      'div',
      { class: 'sets' },
      h(
        'fieldset',
        {},
        h('legend', {}, 'The circuit'),
        ...deviceFields(catalogue, use, old).map(field),
      ),
    ),
    h(
      'noscript',
      {},
      h(
        'p',
        { class: 'small quiet' },
        'Shown for these usual numbers. With scripts allowed, the page reckons with yours.',
      ),
    ),
  );
