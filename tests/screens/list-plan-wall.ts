/** The plan of the demo's photograph, part by part, and the wall. */
import { type At, isNarrow, type Screen } from './screen.ts';

const PLAN = 'app/boards/[boardId]/plan/page.tsx';
const WALL = 'app/boards/[boardId]/wall/page.tsx';

async function openPlan({ page, url, made }: At): Promise<void> {
  await page.goto(`${url}/boards/${made.boards.demo}/plan`);
  await page.getByRole('tab', { name: 'Frames' }).waitFor();
}

function plan(name: string, part: string, go: (at: At) => Promise<unknown>): Screen {
  const open = async (at: At) => {
    await openPlan(at);
    await at.page.getByRole('tab', { name: part, exact: true }).click();
    await go(at);
  };
  return { name: `plan-${name}`, page: PLAN, open };
}

async function openWall({ page, url, made }: At): Promise<void> {
  await page.goto(`${url}/boards/${made.boards.demo}/wall`);
  for (const letter of 'ABCDE')
    await page.getByRole('img', { name: `Painting ${letter}, squared` }).waitFor();
  // Figures of all five are measured one after the other.
  for (const letter of 'ABCDE')
    await page.getByRole('img', { name: new RegExp(`^Ladder of painting ${letter}`) }).waitFor();
}

/** What the plan would look like is painted. */
const painted = (at: At) => at.page.getByText('Working …').first().waitFor({ state: 'hidden' });

const frame = (at: At) => at.page.getByRole('button', { name: /^Proposed frame 1:/ });

export const PLAN_AND_WALL_SCREENS: readonly Screen[] = [
  {
    ...{ name: 'plan-without-photograph', page: PLAN },
    open: async ({ page, url, made }) => {
      await page.goto(`${url}/boards/${made.boards.empty}/plan`);
      await page.getByText('There is no photograph on this board to plan from yet.').waitFor();
    },
  },
  plan('frames', 'Frames', (at) => frame(at).waitFor()),
  plan('frame-in-hand', 'Frames', async (at) => {
    await frame(at).click();
    await at.page.getByRole('button', { name: 'Keep this frame' }).waitFor();
  }),
  plan('weight', 'Weight', (at) =>
    at.page
      .getByRole('img', { name: /beam|weight|heavier|even/i })
      .first()
      .waitFor(),
  ),
  plan('values', 'Values', (at) => at.page.getByRole('button', { name: /Five values/ }).waitFor()),
  plan('rearrange', 'Rearrange', async (at) => {
    await at.page.getByText('Nothing is rearranged yet.').waitFor();
    await painted(at);
  }),
  plan('ladder', 'Ladder', async (at) => {
    await at.page.getByRole('button', { name: 'Take this as the plan' }).waitFor();
    await painted(at);
  }),
  { ...{ name: 'wall', page: WALL }, open: openWall },
  {
    ...{ name: 'wall-two-large', page: WALL },
    open: async (at) => {
      await openWall(at);
      await at.page.getByRole('button', { name: 'Painting B, squared: see it large' }).click();
      await at.page.getByRole('dialog', { name: 'Two paintings large' }).waitFor();
      if (isNarrow(at)) return;
      await at.page.getByRole('dialog').getByRole('img', { name: 'Painting A, squared' }).waitFor();
    },
  },
  {
    ...{ name: 'wall-choosing', page: WALL },
    open: async (at) => {
      await openWall(at);
      await at.page.getByRole('button', { name: 'Which paintings' }).click();
      await at.page.getByRole('dialog', { name: 'Which paintings hang' }).waitFor();
    },
  },
  {
    ...{ name: 'wall-of-one', page: WALL },
    open: async ({ page, url, made }) => {
      await page.goto(`${url}/boards/${made.boards.empty}/wall`);
      await page.getByRole('heading', { name: 'A wall begins with two paintings' }).waitFor();
    },
  },
];
