/** A column of the mix: what one of it costs, and what it gives to which of the rows. */
export interface Column {
  readonly cost: number;
  readonly rows: readonly number[];
  readonly gives: readonly number[];
}

/** Columns mixed, in fractions, so that every row is given what it needs at the least cost. */
export interface Mix<Kind extends Column> {
  /** The next solution may use these too. */
  readonly add: (columns: readonly Kind[]) => void;
  readonly solved: () => Mixed<Kind>;
}

export interface Mixed<Kind extends Column> {
  readonly cost: number;
  /** What one more of each row's need would cost. */
  readonly prices: readonly number[];
  /** How much of each column is in it. */
  readonly shares: ReadonlyMap<Kind, number>;
}

const SMALL = 1e-9;
/** A column that saves less is not worth a change. */
const WORTHWHILE = 1e-7;
/** So many of the columns that save most are tried before all are looked at again. */
const HANDFUL = 50;
const MOST_CHANGES = 6_000;

/**
 * The simplex method with an explicit inverse of the basis (G. B. Dantzig, Linear programming and extensions, 1963, from
 * memory): least cost so that for each row the sum of what the columns give is at least what it needs. A need below
 * nought keeps what columns take from a row to that much. What no column gives is had at the cost `dear`. Each need is
 * moved a little, by an amount of its own, so that the changes never go round in a circle: the mix guides a search, it
 * proves nothing.
 */
export function mix<Kind extends Column>(needs: readonly number[], dear: number): Mix<Kind> {
  const basis = startOf<Kind>(needs, dear);
  const columns: Kind[] = [];
  return {
    add: (more) => {
      columns.push(...more);
    },
    solved: () => {
      solve(basis, columns);
      const shares = new Map<Kind, number>();
      for (const [i, column] of basis.columns.entries()) {
        if (column) shares.set(column, (shares.get(column) ?? 0) + (basis.amounts[i] ?? 0));
      }
      const cost = basis.costs.reduce((total, each, i) => total + each * (basis.amounts[i] ?? 0), 0);
      return { cost, prices: [...basis.prices], shares };
    },
  };
}

interface Basis<Kind> {
  /** What stands in each row: a column, or none where it is had dearly, or is given more than it needs. */
  readonly columns: (Kind | undefined)[];
  readonly costs: Float64Array;
  readonly amounts: Float64Array;
  readonly prices: Float64Array;
  /** Row by row. */
  readonly inverse: Float64Array;
}

function startOf<Kind>(needs: readonly number[], dear: number): Basis<Kind> {
  const inverse = new Float64Array(needs.length ** 2);
  for (const [i, need] of needs.entries()) inverse[i * (needs.length + 1)] = need < 0 ? -1 : 1;
  const costs = Float64Array.from(needs, (need) => (need < 0 ? 0 : dear));
  const amounts = Float64Array.from(needs, (need, i) => Math.abs(need) + 1e-6 * (((i + 1) * 0.618034) % 1));
  return { columns: needs.map(() => undefined), costs, amounts, prices: costs.slice(), inverse };
}

/**
 * Takes in one after another of a handful of columns that saved most when all were last looked at, until none saves any
 * more; then looks at all again.
 */
function solve<Kind extends Column>(basis: Basis<Kind>, columns: readonly Kind[]): void {
  let changes = 0;
  while (changes < MOST_CHANGES) {
    const saving = columns
      .map((column) => ({ column, value: savingOf(basis, column) }))
      .filter(({ value }) => value < -WORTHWHILE)
      .sort((a, b) => a.value - b.value)
      .slice(0, HANDFUL)
      .map(({ column }) => column);
    const before = changes;
    while (changes < MOST_CHANGES && change(basis, saving)) changes++;
    if (changes === before) return;
  }
}

/** Takes in what saves most, a column or an excess over what a row needs; false where nothing saves any more. */
function change<Kind extends Column>(basis: Basis<Kind>, columns: readonly Kind[]): boolean {
  const { prices } = basis;
  let saving = -WORTHWHILE;
  let entering: Kind | undefined;
  for (const column of columns) {
    const value = savingOf(basis, column);
    if (value >= saving) continue;
    saving = value;
    entering = column;
  }
  let excess = -1;
  for (let i = 0; i < prices.length; i++) {
    if ((prices[i] ?? 0) >= saving) continue;
    saving = prices[i] ?? 0;
    excess = i;
  }
  if (excess >= 0) return exchange(basis, { cost: 0, rows: [excess], gives: [-1] }, undefined, saving);
  return entering !== undefined && exchange(basis, entering, entering, saving);
}

/** What one of a column adds to the cost of the mix: below nought where it saves. */
function savingOf({ prices }: Pick<Basis<unknown>, 'prices'>, { cost, rows, gives }: Column): number {
  let value = cost;
  for (let k = 0; k < rows.length; k++) value -= (prices[rows[k] ?? 0] ?? 0) * (gives[k] ?? 0);
  return value;
}

function exchange<Kind>(
  basis: Basis<Kind>,
  entering: Column,
  column: Kind | undefined,
  saving: number,
): boolean {
  const { columns, costs, amounts, prices, inverse } = basis;
  const m = amounts.length;
  const effects = effectsOf(inverse, m, entering);
  let out = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < m; i++) {
    const effect = effects[i] ?? 0;
    if (effect <= SMALL) continue;
    const ratio = Math.max(0, amounts[i] ?? 0) / effect;
    if (ratio >= least) continue;
    least = ratio;
    out = i;
  }
  if (out < 0) return false;
  const own = effects[out] ?? 1;
  for (let k = 0; k < m; k++) {
    const value = (inverse[out * m + k] ?? 0) / own;
    inverse[out * m + k] = value;
    prices[k] = (prices[k] ?? 0) + saving * value;
  }
  for (let i = 0; i < m; i++) {
    const effect = effects[i] ?? 0;
    if (i === out || effect === 0) continue;
    amounts[i] = (amounts[i] ?? 0) - effect * least;
    for (let to = i * m, from = out * m; to < (i + 1) * m; to++, from++) {
      inverse[to] = (inverse[to] ?? 0) - effect * (inverse[from] ?? 0);
    }
  }
  amounts[out] = least;
  columns[out] = column;
  costs[out] = entering.cost;
  return true;
}

/** What one of a column takes from what stands in each row of the basis. */
function effectsOf(inverse: Float64Array, m: number, { rows, gives }: Column): Float64Array {
  const effects = new Float64Array(m);
  for (let k = 0; k < rows.length; k++) {
    const give = gives[k] ?? 0;
    for (let i = 0, at = rows[k] ?? 0; i < m; i++, at += m) {
      effects[i] = (effects[i] ?? 0) + (inverse[at] ?? 0) * give;
    }
  }
  return effects;
}
