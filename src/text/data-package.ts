import { tables } from '../schemas/tables.ts';
import type { Table } from '../schemas/table.ts';
import { edition } from './edition.ts';
import {
  anchorOf,
  columnsOf,
  stemOf,
  tableNames,
  type Column,
  type TableName,
} from './open-data.ts';

const typeOf = ({ holds }: Column): string => {
  if (holds === 'number') return 'number';
  if (holds === 'whole number') return 'integer';
  return holds === 'yes or no' ? 'boolean' : 'string';
};

const fieldOf = (column: Column): object => ({
  name: column.name,
  type: typeOf(column),
  ...(typeOf(column) === 'boolean' && { trueValues: ['yes'], falseValues: ['no'] }),
  ...(column.meaning !== '' && { description: column.meaning }),
  ...(!column.mayBeEmpty && { constraints: { required: true } }),
});

const resourceOf = (name: TableName): object => {
  const table: Table = tables[name];
  const columns = columnsOf(name);
  const keyIsFilled = table.key.every((key) =>
    columns.some((column) => column.name === key && !column.mayBeEmpty),
  );
  return {
    name: anchorOf(name),
    type: 'table',
    path: `${stemOf(name)}.csv`,
    format: 'csv',
    mediatype: 'text/csv',
    encoding: 'utf-8',
    description: table.about,
    schema: {
      fields: columns.map(fieldOf),
      // A primary key may not be empty; some of our keys may be in part.
      ...(keyIsFilled ? { primaryKey: table.key } : { uniqueKeys: [table.key] }),
      missingValues: [''],
    },
  };
};

/** Describes all tables to programs, as a Frictionless data package (version 2), from the schemas that check them. */
export const dataPackage = (): object => ({
  $schema: 'https://datapackage.org/profiles/2.0/datapackage.json',
  name: 'understudy-data',
  title: `${edition.name}: open data`,
  version: edition.version,
  licenses: [{ name: 'CC-BY-4.0', path: edition.dataLicenceUrl, title: edition.dataLicence }],
  resources: tableNames.map(resourceOf),
});
