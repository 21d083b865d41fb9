import { expect, test } from 'vitest';
import { deviceName } from '../../../client/screens/account/device-name.ts';

// User agents as the browsers send them; the frozen forms of Chromium: chromium.org, "User-Agent Reduction", from memory.
test.each([
  [
    'Mozilla/5.0 (Linux; Android 10; K) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/124.0.0.0 Mobile Safari/537.36',
    { browser: 'Chrome', system: 'Android' },
  ],
  [
    'Mozilla/5.0 (iPhone; CPU iPhone OS 17_4 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/17.4 Mobile/15E148 Safari/604.1',
    { browser: 'Safari', system: 'iPhone' },
  ],
  [
    'Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/124.0.0.0 Safari/537.36 Edg/124.0.0.0',
    { browser: 'Edge', system: 'Windows' },
  ],
  [
    'Mozilla/5.0 (X11; Linux x86_64; rv:125.0) Gecko/20100101 Firefox/125.0',
    { browser: 'Firefox', system: 'Linux' },
  ],
  ['curl/8.5.0', null],
  [null, null],
])('%s is %j', (userAgent, expected) => {
  expect(deviceName(userAgent)).toEqual(expected);
});
