import type { TableName } from '../read-folder.ts';

interface Conditions {
  file: TableName;
  /** Table that says what the conditions are. */
  definitions: TableName;
  /** Whether what follows from the old part is given as a share, a corner or a product. */
  isShare: boolean;
}

/** Tables of default conditions: those of positions, and those of uses of devices. */
export const CONDITION_TABLES = [
  { file: 'conditions.csv', definitions: 'condition-definitions.csv', isShare: true },
  {
    file: 'devices/conditions.csv',
    definitions: 'devices/condition-definitions.csv',
    isShare: false,
  },
] as const satisfies readonly Conditions[];
