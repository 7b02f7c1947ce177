/** Languages stand in files of their own, beside the program: nobody waits for one that is not spoken. */
export const languagesApart = {
  name: 'languages-apart',
  setup(build) {
    build.onResolve({ filter: /\.ts$/ }, ({ path, kind, importer }) =>
      kind === 'dynamic-import' && /[\\/]language\.ts$/.test(importer)
        ? { path: path.replace(/\.ts$/, '.js'), external: true }
        : null,
    );
  },
};
