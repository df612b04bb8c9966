// Proves files PDF/A-1b with Apache PDFBox Preflight: `java -cp JARS Preflight.java FILE...`. Exit code 1 if one is not.
import java.io.File;
import java.util.List;
import org.apache.pdfbox.preflight.PreflightDocument;
import org.apache.pdfbox.preflight.ValidationResult;
import org.apache.pdfbox.preflight.exception.SyntaxValidationException;
import org.apache.pdfbox.preflight.parser.PreflightParser;

class Preflight {
  static List<ValidationResult.ValidationError> faultsOf(String path) throws Exception {
    PreflightParser parser = new PreflightParser(new File(path));
    try {
      parser.parse();
      try (PreflightDocument document = parser.getPreflightDocument()) {
        document.validate();
        return document.getResult().getErrorsList();
      }
    } catch (SyntaxValidationException refused) {
      return refused.getResult().getErrorsList();
    }
  }

  public static void main(String[] paths) throws Exception {
    int faults = 0;
    for (String path : paths) {
      for (ValidationResult.ValidationError fault : faultsOf(path)) {
        System.out.println(path + ": " + fault.getErrorCode() + " " + fault.getDetails());
        ++faults;
      }
    }
    System.out.println(paths.length + " files, " + faults + " faults against PDF/A-1b");
    System.exit(faults == 0 ? 0 : 1);
  }
}
