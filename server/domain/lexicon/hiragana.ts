/** Katakana as hiragana: ァ–ヶ lie 0x60 above ぁ–ゖ (Unicode code charts U+3040, U+30A0). */
export function hiragana(text: string): string {
  return text.replace(/[ァ-ヶ]/gu, (sign) => String.fromCharCode(sign.charCodeAt(0) - 0x60));
}
