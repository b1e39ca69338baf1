/**
 * Runs npm and Node.js programs for prepare.mjs. Their output goes to standard error: what is prepared for may
 * be a command whose standard output another program reads. IO: child processes.
 */
import { spawnSync } from 'node:child_process';

/** The running npm, or the one on the path when this script was started without npm. */
export function runNpm(args) {
  const running = process.env.npm_execpath;
  if (running && /npm-cli\.c?js$/.test(running)) return run(process.execPath, [running, ...args], {});
  return run('npm', args, {}, process.platform === 'win32');
}

export function runNode(args, variables) {
  run(process.execPath, args, variables);
}

/** @throws Error naming the program when it is missing or fails. */
export function run(program, args, variables, shell = false) {
  const ended = spawnSync(program, args, {
    stdio: ['ignore', 2, 2],
    env: { ...process.env, ...variables },
    shell,
  });
  if (ended.error) throw new Error(`${program} could not be started: ${ended.error.message}`);
  if (ended.status !== 0) {
    const how = ended.signal ? `was stopped by ${ended.signal}` : `ended with ${ended.status}`;
    throw new Error(`"${[program, ...args].join(' ')}" ${how}. What it said stands above.`);
  }
}
