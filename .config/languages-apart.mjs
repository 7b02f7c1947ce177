/** Languages stand in files of their own, beside the program: nobody waits for one that is not spoken. */
export const languagesApart = {
  name: 'languages-apart',
  setup(build) {
    build.onResolve({ filter: /\.ts$/ }, ({ path, kind, importer }) =>
      kind === 'dynamic-import' && /[\\/]languages?\.ts$/.test(importer)
        ? {
            path: importer.endsWith('language.ts') ? './german-words.js' : path.replace(/\.ts$/, '.js'),
            external: true,
          }
        : null,
    );
  },
};
