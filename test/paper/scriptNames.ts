/** Names in twelve scripts, as people would give them to a system, its place or a bed. Invented. */
export type ScriptName = { readonly script: string; readonly name: string };

export const scriptNames: readonly ScriptName[] = [
  { script: 'Latin', name: 'Łąkowa Żaba, Ñandú Ďaleko' },
  { script: 'Greek', name: 'Λιμνούλα του Αμπελώνα' },
  { script: 'Cyrillic', name: 'Зелёная заводь Їжачка' },
  { script: 'Arabic', name: 'حوض السمك الكبير' },
  { script: 'Hebrew', name: 'בריכת הדגים הירוקה' },
  { script: 'Devanagari', name: 'मछली और सब्ज़ी की क्यारी' },
  { script: 'Bengali', name: 'সবুজ পুকুর মাছের ট্যাঙ্ক' },
  { script: 'Tamil', name: 'பச்சை மீன் தொட்டி' },
  { script: 'Thai', name: 'บ่อปลาและสวนผักริมน้ำ' },
  { script: 'Chinese', name: '青石巷养鱼种菜一号池' },
  { script: 'Japanese', name: 'みどり町の養魚タンクと菜園' },
  { script: 'Korean', name: '초록마을 물고기와 채소밭' },
];
