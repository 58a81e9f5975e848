import type { TypeRow } from '../../schemas/types.ts';
import type { Part } from '../assessment/parts.ts';

/** Volts in which parts of a type are rated: what is approved for a duty at the mains, in AC. */
export const voltageKindOf = ({
  safety_classes: duties,
}: Pick<TypeRow, 'safety_classes'>): Part['voltageKind'] => (duties.length > 0 ? 'ac' : 'dc');
