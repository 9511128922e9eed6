/** Something to be computed after what it needs. */
export interface GraphNode {
  readonly key: string;
  /** Keys of other nodes. */
  readonly needs: readonly string[];
  /** Computes the node; what it needs has been computed. Answers whether anything changed. */
  readonly compute: () => boolean;
}

/**
 * A dependency graph: computes nodes after what they need, whatever the order of writing, and after a
 * change only what depends on it.
 */
export class Graph {
  /** Keys along one circle of needs, the first again at the end; undefined if there is none. */
  readonly cycle: readonly string[] | undefined;
  private readonly nodes: readonly GraphNode[];
  private readonly places = new Map<string, number>();
  /** Places of the nodes that need each node. */
  private readonly users: readonly number[][];
  /** Places in an order in which everything comes after its needs. */
  private readonly order: readonly number[];
  /** Where in that order each place stands. */
  private readonly turn: Int32Array;

  /** @param nodes with keys of their own; needs that name no node are taken as met */
  constructor(nodes: readonly GraphNode[]) {
    this.nodes = nodes;
    nodes.forEach(({ key }, place) => {
      this.places.set(key, place);
    });
    this.users = nodes.map(() => []);
    nodes.forEach(({ needs }, place) => {
      for (const need of new Set(needs)) {
        const at = this.places.get(need);
        if (at !== undefined) this.users[at]?.push(place);
      }
    });
    this.order = this.inOrder();
    this.turn = new Int32Array(nodes.length);
    this.order.forEach((place, i) => {
      this.turn[place] = i;
    });
    this.cycle = this.order.length < nodes.length ? this.findCycle() : undefined;
  }

  /** Computes every node that no circle keeps waiting. */
  computeAll(): void {
    for (const place of this.order) this.nodes[place]?.compute();
  }

  /** After the values behind some nodes changed: computes those nodes' users, and only them. */
  recompute(changed: readonly string[]): void {
    const waiting = new Uint8Array(this.nodes.length);
    let [first, last] = [this.order.length, -1];
    const wake = (place: number) => {
      for (const user of this.users[place] ?? []) {
        waiting[user] = 1;
        const turn = this.turn[user] ?? 0;
        if (turn < first) first = turn;
        if (turn > last) last = turn;
      }
    };
    for (const key of changed) {
      const place = this.places.get(key);
      if (place !== undefined) wake(place);
    }
    for (let i = first; i <= last; i++) {
      const place = this.order[i] as number;
      if (waiting[place] === 1 && this.nodes[place]?.compute()) wake(place);
    }
  }

  /** Kahn's order (1962): nodes whose needs are met, one after another. */
  private inOrder(): readonly number[] {
    const open = this.nodes.map(
      ({ needs }) => [...new Set(needs)].filter((need) => this.places.has(need)).length,
    );
    const ready = open.flatMap((count, place) => (count === 0 ? [place] : []));
    for (let i = 0; i < ready.length; i++)
      for (const user of this.users[ready[i] as number] ?? []) {
        open[user] = (open[user] ?? 0) - 1;
        if (open[user] === 0) ready.push(user);
      }
    return ready;
  }

  /** Follows needs among the nodes left over until one comes up again. */
  private findCycle(): readonly string[] {
    const done = new Set(this.order);
    const left = this.nodes.findIndex((_, place) => !done.has(place));
    const path: number[] = [];
    let place = left;
    while (!path.includes(place)) {
      path.push(place);
      const next = this.nodes[place]?.needs
        .map((need) => this.places.get(need))
        .find((at) => at !== undefined && !done.has(at));
      place = next ?? left;
    }
    const circle = [...path.slice(path.indexOf(place)), place];
    return circle.map((at) => this.nodes[at]?.key ?? '');
  }
}
