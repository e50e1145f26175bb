/**
 * Imported before any schema. The policy of the pages lets nothing be compiled from text; the schemas would try that
 * first, and to say that it failed reads the whole script once more.
 */
import * as z from 'zod';

z.config({ jitless: true });
