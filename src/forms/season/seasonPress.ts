/** The press of the crops page; fetched while nobody waits for it yet. */
import { browserPress } from '../../paper/browser.ts';
import { loaded } from '../loaded.ts';

export const thePress = loaded(browserPress);
thePress().catch(() => undefined);
