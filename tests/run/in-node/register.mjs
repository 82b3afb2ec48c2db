// Begun with this, Node takes the sources as they are: node --import ./tests/run/in-node/register.mjs
import { register } from 'node:module';

register('./sources.mjs', import.meta.url);
