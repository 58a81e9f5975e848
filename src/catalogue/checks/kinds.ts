import { valuesOf } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const completeRule = 'missing-figure-of-kind';

/** As of capacitors: what decides must be said of every type, if only that it is not known. */
export const kindFiguresComplete: Check = {
  id: completeRule,
  about: 'Every type of a kind has a row for every decisive property of that kind.',
  needs: ['kinds/types.csv', 'kinds/properties.csv', 'figures.csv'],
  check: (tables) => {
    const decisive = valuesOf(tables, 'kinds/properties.csv').filter(
      (property) => property.decisive === 'yes',
    );
    const said = new Set(
      tables['figures.csv'].rows.map(({ cells }) => `${cells['type']} ${cells['property']}`),
    );
    return goodRows(tables, 'kinds/types.csv').flatMap((row) =>
      decisive
        .filter(({ kinds }) => kinds.includes(row.value.kind))
        .filter((property) => !said.has(`${row.value.id} ${property.id}`))
        .map((property) =>
          cellFault(completeRule, 'kinds/types.csv', row, 'id', {
            wrong: `no row about ${property.id}`,
            expected: `a row ${row.value.id},${property.id} in figures.csv`,
            how: 'say "unknown" where no figure is known',
          }),
        ),
    );
  },
};

const namesRule = 'id-taken';

/** Pairs of tables whose ids stand in the same addresses. */
const SHARED = [
  ['kinds/types.csv', 'types.csv'],
  ['kinds/positions.csv', 'positions.csv'],
  ['kinds/properties.csv', 'properties.csv'],
] as const;

export const kindIds: Check = {
  id: namesRule,
  about: 'No type, position or property of a kind is called as one of capacitors is.',
  needs: SHARED.flat(),
  check: (tables) =>
    SHARED.flatMap(([file, other]) => {
      const taken = new Set(tables[other].rows.map(({ cells }) => cells['id']));
      return tables[file].rows
        .filter(({ cells }) => taken.has(cells['id']))
        .map((row) =>
          cellFault(namesRule, file, row, 'id', {
            wrong: `${other} has one of this name`,
            expected: 'a name of its own',
          }),
        );
    }),
};

const offersRule = 'missing-offer-of-kind';

export const kindOffersComplete: Check = {
  id: offersRule,
  about: 'A type of a kind is offered if it can be bought, and otherwise not.',
  needs: ['kinds/types.csv', 'kinds/offers.csv'],
  check: (tables) => {
    const offered = new Set(tables['kinds/offers.csv'].rows.map(({ cells }) => cells['type']));
    return goodRows(tables, 'kinds/types.csv')
      .filter(({ value: { id, market } }) => {
        const bought = market !== 'none' && market !== 'old-stock';
        return bought !== offered.has(id);
      })
      .map((row) =>
        cellFault(offersRule, 'kinds/types.csv', row, 'market', {
          wrong: offered.has(row.value.id) ? 'yet it is offered' : 'yet nothing of it is offered',
          expected: 'rows in kinds/offers.csv for what can be bought, and for nothing else',
        }),
      );
  },
};

const pairsRule = 'kind-of-pair';

export const kindPairs: Check = {
  id: pairsRule,
  about: 'A pair that is not met is of a type and a position of one kind.',
  needs: ['unlikely-pairs.csv', 'kinds/kinds.csv', 'kinds/types.csv', 'kinds/positions.csv'],
  check: (tables) => {
    const kinds = new Set(tables['kinds/kinds.csv'].rows.map(({ cells }) => cells['id']));
    const kindOf = (file: 'kinds/types.csv' | 'kinds/positions.csv') =>
      new Map(tables[file].rows.map(({ cells }) => [cells['id'], cells['kind']]));
    const [types, positions] = [kindOf('kinds/types.csv'), kindOf('kinds/positions.csv')];
    // A kind that there is not is a fault of its own row.
    const isTold = (kind: string | undefined): boolean => kind === undefined || kinds.has(kind);
    return goodRows(tables, 'unlikely-pairs.csv')
      .filter(({ value }) => {
        const [own, other] = [types.get(value.type), positions.get(value.position)];
        return own !== other && isTold(own) && isTold(other);
      })
      .map((row) =>
        cellFault(pairsRule, 'unlikely-pairs.csv', row, 'position', {
          wrong: `a position of another kind than ${row.value.type}`,
          expected: 'a position of the same kind',
        }),
      );
  },
};
