'use client';
/**
 * Hands the tools of a screen down to its parts, each member by a context of its own: a part is drawn again only when
 * something changes that it asked for. With one context for all of them a letter pressed drew the whole board anew.
 *
 * In the flow: `ToolsProvider`, a class -> [tools here] -> every part that asks for tools.
 */
import { type Context, createContext, type ReactNode, use } from 'react';
import type { Tools } from './tools.ts';

type Name = keyof Tools;
type Contexts = { readonly [Key in Name]: Context<Tools[Key] | undefined> };

/** Complete by its type: a member without a name here does not compile. */
const NAMES = Object.keys({
  ...{ hand: 1, tool: 1, setTool: 1, taken: 1, outlining: 1, setOutlining: 1 },
  ...{ planeId: 1, setPlaneId: 1, markId: 1, setMarkId: 1, referenceId: 1, setReferenceId: 1 },
  ...{ paintingId: 1, setPaintingId: 1, arrange: 1, setArrange: 1, side: 1, setSide: 1 },
  ...{ surround: 1, setSurround: 1, squint: 1, setSquint: 1, linesShown: 1, setLinesShown: 1 },
  ...{ marksShown: 1, setMarksShown: 1, tableShown: 1, setTableShown: 1 },
} satisfies Record<Name, 1>) as Name[];

const CONTEXTS = Object.fromEntries(
  NAMES.map((name) => [name, createContext(undefined)]),
) as unknown as Contexts;

function read<Key extends Name>(name: Key): Tools[Key] {
  const member = use(CONTEXTS[name]);
  if (member === undefined) throw new Error('useTools is used outside ToolsProvider.');
  return member;
}

/** Asks for a member at the moment it is taken out, which React allows of `use` anywhere while drawing. */
const ASKING = Object.defineProperties(
  {},
  Object.fromEntries(NAMES.map((name) => [name, { enumerable: true, get: () => read(name) }])),
) as Tools;

/**
 * The tools, to be taken apart at once while drawing: `const { tool, setTool } = useTools()`. What is not taken out
 * is not listened to. For an object to keep, `useAllTools`.
 * @throws Error outside `ToolsProvider`: a bug.
 */
export function useTools(): Tools {
  return ASKING;
}

const AllContext = createContext<Tools | null>(null);

/**
 * All of them as they are now, for effects and answers to keys. Whoever asks is drawn with every change.
 * @throws Error as above.
 */
export function useAllTools(): Tools {
  const tools = use(AllContext);
  if (!tools) throw new Error('useAllTools is used outside ToolsProvider.');
  return tools;
}

/** These tools for what lies inside: the screen's own, or what a class leaves of them. */
export function ToolsHere({ tools, children }: { tools: Tools; children: ReactNode }) {
  let inside = children;
  for (const name of NAMES) {
    const Here = CONTEXTS[name] as Context<unknown>;
    inside = <Here value={tools[name]}>{inside}</Here>;
  }
  return <AllContext value={tools}>{inside}</AllContext>;
}
