/** A path as it can be pasted behind a command: quoted where a shell would read it otherwise (POSIX.1-2017, 2.2.2). */
export const forShell = (path: string): string =>
  /^[\p{L}\p{N}_./:@%+=,-]+$/u.test(path) ? path : `'${path.replaceAll("'", "'\\''")}'`;
