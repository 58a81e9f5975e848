import { formatValue, type Catalogue, type Unit } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import type { ConditionDefinitionRow } from '../schemas/positions.ts';
import type { DeviceRow, UseRow } from '../schemas/devices.ts';

/** One number of a use that a visitor may change. */
export interface DeviceField {
  definition: ConditionDefinitionRow;
  unit: Unit;
  /** Its usual number here, SI. */
  usual: number;
}

/** The numbers of a use, in the order of its rows. */
export const deviceFields = (catalogue: Catalogue, use: UseRow): DeviceField[] =>
  catalogue.devices.conditions
    .filter((row) => row.position === use.id)
    .flatMap((row) => {
      const definition = catalogue.devices.conditionDefinitions.find(
        ({ id }) => id === row.condition,
      );
      const unit = definition && catalogue.units[definition.unit];
      if (definition === undefined || unit === undefined) return [];
      return [{ definition, unit: unit.si as Unit, usual: (row.typ ?? 0) * unit.factor }];
    });

const field = ({ definition, unit, usual }: DeviceField): Markup =>
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
    h('small', { id: `${definition.id}-note`, class: 'hint', 'aria-live': 'polite' }, 'usual'),
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
      h('fieldset', {}, h('legend', {}, 'The circuit'), ...deviceFields(catalogue, use).map(field)),
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
