/** What few starts need stands in files of its own beside the program: a language is read by who speaks it, conf by who changes a setting. */
export const loadedApart = {
  name: 'loaded-apart',
  setup(build) {
    build.onResolve({ filter: /^\.\/(?:german|conf)\.ts$/ }, ({ path, kind }) =>
      kind === 'dynamic-import' ? { path: path.replace(/\.ts$/, '.js'), external: true } : null,
    );
  },
};
