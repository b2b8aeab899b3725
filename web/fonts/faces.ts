// A picture can ask a canvas for a family but not for a weight, so each weight that pictures use is a family of its own,
// made from the same file as the style sheet's.

const WEIGHTS = ["500", "600", "700"];

for (const sheet of document.styleSheets) {
  for (const rule of sheet.cssRules) {
    if (!(rule instanceof CSSFontFaceRule)) continue;
    const family = rule.style.getPropertyValue("font-family").replaceAll(/["']/g, "");
    if (family !== "Plex Sans") continue;
    for (const weight of WEIGHTS) {
      document.fonts.add(new FontFace(`${family} ${weight}`, rule.style.getPropertyValue("src"), { weight }));
    }
  }
}
