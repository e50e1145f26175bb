/** The emergency box with the words of this system. */
import { card } from '../cardWords.ts';
import { emergencies } from '../emergencyWords.ts';
import type { SheetInput } from '../sheet.ts';
import { EmergencyBox } from './EmergencyBox.tsx';

export function Emergencies({ input }: { input: SheetInput }) {
  return (
    <EmergencyBox
      title={card(input, 'wrong')}
      first={[card(input, 'wrongFirst')]}
      cases={emergencies(input)}
      never={card(input, 'never')}
      call={card(input, 'call')}
      or={card(input, 'or')}
    />
  );
}

/** Cautions that stand on every sheet that is used at the tank. */
export function cautions(input: SheetInput): readonly string[] {
  return [card(input, 'cautions'), card(input, 'deferShort')];
}
