/** The tools that point at one place of a picture: patches, a guess, the air colour, the focus. Pure. */
import type { Tool } from '#app/_workspace/tools.ts';

const POINTING = ['patch', 'guess', 'air', 'focus'] as const;
export type PointingTool = (typeof POINTING)[number];

export const isPointing = (tool: Tool): tool is PointingTool => POINTING.some((name) => name === tool);
