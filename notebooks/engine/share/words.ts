/** Why a link can't be opened, and what to do. */
export const linkWords = {
  tooLong: "This link is too long to be one of this workbook’s. Ask for the notebook as a file.",
  broken:
    "This link is not whole: a part was lost or changed on the way. Copy all of it, to its last " +
    "letter, or ask for it again.",
  newer:
    "This link was made by a newer version of the workbook than this one. Load the page again when " +
    "you are online, then open the link once more.",
  tooMuch: "There is more in this link than a link may hold. Ask for the notebook as a file.",
} as const;

/** Why a link can't be made. */
export const tooMuchForALink =
  "So much was changed that no link can hold it. Save the notebook as a file and send that.";
