import { join } from 'node:path';

/** The environment of a maker whose folders lie in `home`: nothing of whoever runs the tests but the way to programs. */
export const hermetic = (home: string): Readonly<Record<string, string | undefined>> => ({
  PATH: process.env.PATH,
  HOME: home,
  XDG_CONFIG_HOME: join(home, 'config'),
  XDG_DATA_HOME: join(home, 'data'),
  XDG_STATE_HOME: join(home, 'state'),
  XDG_CACHE_HOME: join(home, 'cache'),
});
