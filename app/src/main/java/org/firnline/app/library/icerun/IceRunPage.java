package org.firnline.app.library.icerun;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.firnline.app.words.Words;
import org.firnline.evidence.Problem;
import org.firnline.learning.icerun.IceRunAnswer;
import org.firnline.learning.icerun.IceRunEvaluation;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;

/** The ice run: how to do it, the sheet to print, and the answer to a filled sheet. */
@Controller
class IceRunPage {

  @GetMapping("/library/ice-run")
  String guide(Model model, Locale locale) {
    model.addAttribute("sheet", IceRunTemplate.text(Words.in(locale)));
    model.addAttribute("rows", IceRunTemplate.rows());
    model.addAttribute("lines", IceRunTemplate.lines());
    return "library/ice-run";
  }

  /** The empty sheet as a file for a spreadsheet. */
  @GetMapping("/library/ice-run/sheet.csv")
  ResponseEntity<byte[]> sheet(Locale locale) {
    return ResponseEntity.ok()
        .contentType(new MediaType("text", "csv", StandardCharsets.UTF_8))
        .header("Content-Disposition", "attachment; filename=\"ice-run.csv\"")
        .body(IceRunTemplate.text(Words.in(locale)).getBytes(StandardCharsets.UTF_8));
  }

  @PostMapping("/library/ice-run")
  ModelAndView evaluate(
      @RequestParam("pasted") String pasted,
      @RequestParam("files") List<MultipartFile> files,
      Model model,
      Locale locale)
      throws IOException {
    List<IceRunReading> readings = new ArrayList<>();
    for (MultipartFile file : files) {
      if (!file.isEmpty()) {
        String name = String.valueOf(file.getOriginalFilename());
        String text = new String(file.getBytes(), StandardCharsets.UTF_8);
        readings.add(IceRunSheet.read(name, text, Words.in(locale)));
      }
    }
    if (!pasted.isBlank() && readings.isEmpty()) {
      Words words = Words.in(locale);
      readings.add(IceRunSheet.read(words.say("icerun.pasted.name"), pasted, words));
    }
    List<Problem> problems =
        readings.stream().flatMap(reading -> reading.problems().stream()).toList();
    guide(model, locale);
    model.addAttribute("sheet", pasted.isBlank() ? model.getAttribute("sheet") : pasted);
    model.addAttribute("problems", problems);
    model.addAttribute("missing", readings.isEmpty());
    if (readings.isEmpty() || !problems.isEmpty()) {
      return new ModelAndView("library/ice-run", model.asMap(), HttpStatus.UNPROCESSABLE_CONTENT);
    }
    List<IceRunAnswer> answers =
        readings.stream()
            .map(reading -> new IceRunEvaluation().evaluate(reading.run().orElseThrow()))
            .toList();
    List<String> assumed =
        readings.stream().flatMap(reading -> reading.assumed().stream()).distinct().toList();
    model.addAttribute(
        "answer", IceRunView.of(IceRunFindings.of(answers), assumed, Words.in(locale)));
    return new ModelAndView("library/ice-run", model.asMap());
  }
}
