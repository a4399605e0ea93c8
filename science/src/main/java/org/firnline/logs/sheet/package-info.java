/**
 * Spreadsheets as rows of cells: the two open forms, .xlsx and .ods, read straight from their XML
 * as a stream. Formulas are never worked out; the value the program stored beside them counts. Of
 * the XML only elements, attributes and text are read: no type definitions, no entities, nothing
 * from elsewhere.
 *
 * <p>Sources: ECMA-376 part 1 (SpreadsheetML), chapter 18; OASIS OpenDocument 1.3 part 3, chapter 9
 * (both from memory).
 *
 * <p>May use: org.firnline.logs.text. Start reading at {@link org.firnline.logs.sheet.Workbook}.
 */
@NullMarked
package org.firnline.logs.sheet;

import org.jspecify.annotations.NullMarked;
