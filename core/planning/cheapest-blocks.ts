import { type Block, MOST_STEP_ROUNDS as MOST_ROUNDS, type Prices } from './block-cost.ts';

/**
 * All blocks, the cheapest first: each choice of drills and their rounds once, in the order that
 * costs least. No drill comes twice in a block. Exact, and always the same for the same prices.
 *
 * A best-first search (A*: Hart, Nilsson and Raphael, IEEE Trans. SSC 4, 1968, from memory) over
 * what was played so far and with which drill last. What is still to come is never overestimated:
 * it is what it would cost at least if drills could come again, which a table tells. With forty
 * drills and eight rounds it looks on from some twenty states.
 */
export function* cheapestBlocks(prices: Prices): Generator<{ block: Block; cost: number }> {
  const rest = new Rest(prices);
  const queue = new Queue();
  const seen = new Set<string>();
  queue.add(new WaysOn({ had: prices.family.map(() => 0), left: prices.rounds, spent: 0 }, rest));
  for (let ways = queue.take(); ways; ways = queue.take()) {
    const state = ways.takeBest();
    queue.add(ways);
    const key = keyOf(state);
    if (seen.has(key)) continue;
    seen.add(key);
    if (state.left > 0) queue.add(new WaysOn(state, rest));
    else yield { block: blockOf(state), cost: rest.nothing + state.spent };
  }
}

/** A block as far as it was put together. */
interface State {
  last?: { drill: number; rounds: number; before: State };
  /** Rounds by family. */
  had: readonly number[];
  /** Rounds still to come. */
  left: number;
  /** What it costs so far, more than an empty block. */
  spent: number;
}

function blockOf(state: State): Block {
  const steps = [];
  for (let { last } = state; last; last = last.before.last) {
    steps.push({ drill: last.drill, rounds: last.rounds });
  }
  return steps.reverse();
}

/**
 * The drills and their rounds, whatever their order; of a block that goes on, also the last drill.
 * Of states with one key the first to be reached is the cheapest.
 */
function keyOf(state: State): string {
  const steps = blockOf(state)
    .map(({ drill, rounds }) => drill * (MOST_ROUNDS + 1) + rounds)
    .sort((a, b) => a - b);
  return `${steps}${state.left > 0 ? ` ${state.last?.drill}` : ''}`;
}

/**
 * The least cost of the rounds still to come, by how many each family has had and the last drill,
 * if any drill but the last could come next.
 */
class Rest {
  /** What an empty block costs. */
  readonly nothing: number;
  private readonly strides: number[];
  private readonly table: Float64Array;

  constructor(readonly prices: Prices) {
    const { rounds, familyOf, family, move } = prices;
    const drills = familyOf.length;
    this.nothing = family.reduce((sum, price) => sum + price[0]!, 0);
    this.strides = family.map((_, own) => (rounds + 1) ** own);
    const size = (rounds + 1) ** family.length;
    this.table = new Float64Array(size * drills).fill(Number.POSITIVE_INFINITY);
    const next = new Float64Array(drills);
    // Downwards, since every count needs those in which one family has had more.
    for (let at = size - 1; at >= 0; at -= 1) {
      const had = this.strides.map((stride) => Math.floor(at / stride) % (rounds + 1));
      const left = rounds - had.reduce((sum, n) => sum + n, 0);
      if (left === 0) this.table.fill(0, at * drills, (at + 1) * drills);
      if (left <= 0) continue;
      for (let drill = 0; drill < drills; drill += 1) {
        let best = Number.POSITIVE_INFINITY;
        for (let n = 1; n <= Math.min(MOST_ROUNDS, left); n += 1) {
          best = Math.min(best, this.step(had, drill, n) + this.after(had, drill, n));
        }
        next[drill] = best;
      }
      for (let last = 0; last < drills; last += 1) {
        const moves = move[last]!;
        let best = Number.POSITIVE_INFINITY;
        for (let drill = 0; drill < drills; drill += 1) {
          const cost = moves[drill]! + next[drill]!;
          if (cost < best && drill !== last) best = cost;
        }
        this.table[at * drills + last] = best;
      }
    }
  }

  /** What a step adds by itself, without the way to it. */
  step(had: readonly number[], drill: number, rounds: number): number {
    const own = this.prices.familyOf[drill]!;
    const price = this.prices.family[own]!;
    const from = had[own]!;
    return this.prices.step[drill]![rounds]! + price[from + rounds]! - price[from]!;
  }

  /** What costs at least all that comes after a step. */
  after(had: readonly number[], drill: number, rounds: number): number {
    const { strides } = this;
    let at = rounds * strides[this.prices.familyOf[drill]!]!;
    for (let own = 0; own < strides.length; own += 1) at += had[own]! * strides[own]!;
    return this.table[at * this.prices.familyOf.length + drill]!;
  }
}

/** The steps that can follow a state, to be taken one by one, the most promising first. */
class WaysOn {
  /** What the block will cost at least, by the drill and rounds of the step: Infinity where taken. */
  private readonly ways: Float64Array;
  private best = 0;

  constructor(
    private readonly state: State,
    private readonly rest: Rest,
  ) {
    const { familyOf } = rest.prices;
    const { had, left, spent } = state;
    const used = new Set(blockOf(state).map(({ drill }) => drill));
    this.ways = new Float64Array(familyOf.length * MOST_ROUNDS).fill(Number.POSITIVE_INFINITY);
    for (let drill = 0; drill < familyOf.length; drill += 1) {
      if (used.has(drill)) continue;
      const reached = spent + this.reach(drill);
      for (let n = 1; n <= Math.min(MOST_ROUNDS, left); n += 1) {
        const on = rest.step(had, drill, n) + rest.after(had, drill, n);
        this.ways[drill * MOST_ROUNDS + n - 1] = reached + on;
      }
    }
    this.findBest();
  }

  /** What the cheapest block by the best way left costs at least; Infinity where none is left. */
  get least(): number {
    return this.ways[this.best] ?? Number.POSITIVE_INFINITY;
  }

  /** Rounds still to come after that way. */
  get left(): number {
    return this.state.left - 1 - (this.best % MOST_ROUNDS);
  }

  /** The state by the best way, which is then taken. */
  takeBest(): State {
    const { rest, state, best } = this;
    const drill = Math.floor(best / MOST_ROUNDS);
    const rounds = 1 + (best % MOST_ROUNDS);
    const { familyOf } = rest.prices;
    const next = {
      last: { drill, rounds, before: state },
      had: state.had.map((n, own) => (own === familyOf[drill] ? n + rounds : n)),
      left: state.left - rounds,
      spent: state.spent + this.reach(drill) + rest.step(state.had, drill, rounds),
    };
    this.ways[best] = Number.POSITIVE_INFINITY;
    this.findBest();
    return next;
  }

  private reach(drill: number): number {
    const { open, move } = this.rest.prices;
    return this.state.last ? move[this.state.last.drill]![drill]! : open[drill]!;
  }

  private findBest(): void {
    for (let way = 0; way < this.ways.length; way += 1) {
      if (this.ways[way]! < this.ways[this.best]!) this.best = way;
    }
  }
}

/** Ways on, those that cost least first; of equals those with less to come, then those added first. */
class Queue {
  private readonly heap: Queued[] = [];
  private added = 0;

  add(ways: WaysOn): void {
    if (ways.least === Number.POSITIVE_INFINITY) return;
    const own = { ways, order: this.added++ };
    let place = this.heap.length;
    for (; place > 0; place = parent(place)) {
      const above = this.heap[parent(place)]!;
      if (!comesFirst(own, above)) break;
      this.heap[place] = above;
    }
    this.heap[place] = own;
  }

  take(): WaysOn | undefined {
    const first = this.heap[0];
    const last = this.heap.pop();
    if (!first || !last || first === last) return first?.ways;
    let place = 0;
    for (;;) {
      const [left, right] = [this.heap[2 * place + 1], this.heap[2 * place + 2]];
      const below = right && left && comesFirst(right, left) ? right : left;
      if (!below || !comesFirst(below, last)) break;
      this.heap[place] = below;
      place = 2 * place + (below === left ? 1 : 2);
    }
    this.heap[place] = last;
    return first.ways;
  }
}

interface Queued {
  ways: WaysOn;
  order: number;
}

const parent = (place: number) => (place - 1) >> 1;

function comesFirst(a: Queued, b: Queued): boolean {
  if (a.ways.least !== b.ways.least) return a.ways.least < b.ways.least;
  if (a.ways.left !== b.ways.left) return a.ways.left < b.ways.left;
  return a.order < b.order;
}
