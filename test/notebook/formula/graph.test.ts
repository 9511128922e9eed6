import { describe, expect, it } from 'vitest';
import { Graph, type GraphNode } from '../../../src/notebook/formula/graph.ts';

/** Nodes that note when they are computed. */
function noting(needs: Readonly<Record<string, readonly string[]>>) {
  const computed: string[] = [];
  const nodes = Object.entries(needs).map(
    ([key, own]): GraphNode => ({
      key,
      needs: own,
      compute: () => {
        computed.push(key);
        return true;
      },
    }),
  );
  return { graph: new Graph(nodes), computed };
}

describe('dependency graph', () => {
  it('computes after needs, whatever the order of writing', () => {
    const { graph, computed } = noting({ c: ['b', 'a'], b: ['a'], a: [] });
    graph.computeAll();
    expect(computed).toEqual(['a', 'b', 'c']);
  });

  it('computes again only what depends on a change, each once', () => {
    const { graph, computed } = noting({
      input: [],
      left: ['input'],
      right: ['input'],
      both: ['left', 'right'],
      other: [],
    });
    graph.computeAll();
    computed.length = 0;
    graph.recompute(['input']);
    expect(computed).toEqual(['left', 'right', 'both']);
  });

  it('stops where nothing changed', () => {
    const computed: string[] = [];
    const node = (key: string, needs: readonly string[], changes: boolean): GraphNode => ({
      key,
      needs,
      compute: () => {
        computed.push(key);
        return changes;
      },
    });
    const graph = new Graph([node('a', [], true), node('b', ['a'], false), node('c', ['b'], true)]);
    graph.recompute(['a']);
    expect(computed).toEqual(['b']);
  });

  it('tells a circle with its whole path, and computes what is outside it', () => {
    const { graph, computed } = noting({ a: ['c'], b: ['a'], c: ['b'], d: [] });
    expect(graph.cycle).toEqual(['a', 'c', 'b', 'a']);
    graph.computeAll();
    expect(computed).toEqual(['d']);
    expect(noting({ self: ['self'] }).graph.cycle).toEqual(['self', 'self']);
  });

  it('a chain of 10,000 nodes needs no deep stack', () => {
    const chain = Object.fromEntries(
      Array.from({ length: 10_000 }, (_, i) => [`n${i}`, i === 0 ? [] : [`n${i - 1}`]]),
    );
    const { graph, computed } = noting(chain);
    graph.recompute(['n0']);
    expect(computed).toHaveLength(9999);
  });
});
