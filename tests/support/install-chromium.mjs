// Installs Debian's Chromium where no Chromium or Chrome is found; runs on Node 20 before `npm ci`.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
const found = (process.env.PATH ?? '')
  .split(':')
  .flatMap((folder) => names.map((name) => join(folder, name)))
  .find(existsSync);

if (process.env.CHROMIUM_PATH ?? found) {
  console.log(`Browser for the tests: ${process.env.CHROMIUM_PATH ?? found}`);
} else {
  const asRoot = process.getuid?.() === 0 ? [] : ['sudo'];
  for (const words of [
    ['apt-get', 'update'],
    ['apt-get', 'install', '-y', '--no-install-recommends', 'chromium'],
  ]) {
    const [command, ...rest] = [...asRoot, ...words];
    const { status } = spawnSync(command, rest, {
      stdio: 'inherit',
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
    if (status !== 0) {
      console.error(
        'Chromium could not be installed. Install Chromium or Chrome yourself, or set CHROMIUM_PATH to one.',
      );
      process.exit(1);
    }
  }
}
