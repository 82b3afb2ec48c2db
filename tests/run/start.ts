/** Builds the app where needed, serves it on this machine and says where the sample garment is. */
import { buildIfNeeded } from './built.ts';
import { serveNear } from './serve.ts';

const firstPort = Number(process.env.PORT ?? 4173);

buildIfNeeded();
const { url } = await serveNear({ root: 'dist', port: firstPort, compress: true });
console.log(`Ridgeline is ready. The sample garment, on its needles:\n\n  ${url}#/sample\n`);
console.log('End with Ctrl+C.');
