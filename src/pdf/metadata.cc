// In: title, subject, language and date of a document. Out: the same twice, for old readers in the information dictionary and
// for new ones as XMP (ISO 16684-1). PDF/A wants the two to agree; PDF/A and PDF/UA are named in the second.
#include "pdf/metadata.h"

#include <algorithm>

#include "base/ascii.h"
#include "base/utf8.h"
#include "pdf/syntax.h"

namespace benchleaf::pdf {

namespace {

constexpr std::string_view kProducer = "Benchleaf";

/// Text for XML; what XML 1.0 has no place for (control characters) becomes U+FFFD.
std::string xml_text(std::string_view utf8) {
  std::string out;
  for (char32_t code : base::code_points(utf8)) {
    switch (code) {
      case U'&': out += "&amp;"; break;
      case U'<': out += "&lt;"; break;
      case U'>': out += "&gt;"; break;
      default: out += base::to_utf8(code < 0x20 && code != U'\t' ? U'\uFFFD' : code);
    }
  }
  return out;
}

void append_language_alternative(std::string& out, std::string_view name, const std::string& text) {
  if (text.empty()) return;
  const std::string element(name);
  out += "<" + element + "><rdf:Alt><rdf:li xml:lang=\"x-default\">" + xml_text(text) + "</rdf:li></rdf:Alt></" + element + ">\n";
}

constexpr std::string_view kPacketHead =
    "<?xpacket begin=\"\xEF\xBB\xBF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
    "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
    "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n";

constexpr std::string_view kStandards =
    "<rdf:Description rdf:about=\"\" xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\">\n"
    "<pdfaid:part>1</pdfaid:part>\n<pdfaid:conformance>B</pdfaid:conformance>\n</rdf:Description>\n"
    "<rdf:Description rdf:about=\"\" xmlns:pdfuaid=\"http://www.aiim.org/pdfua/ns/id/\">\n"
    "<pdfuaid:part>1</pdfuaid:part>\n</rdf:Description>\n";

/// PDF/A-1 knows nothing of PDF/UA, so the one property used is described as the standard asks (ISO 19005-1, 6.7.8).
constexpr std::string_view kExtension =
    "<rdf:Description rdf:about=\"\" xmlns:pdfaExtension=\"http://www.aiim.org/pdfa/ns/extension/\""
    " xmlns:pdfaSchema=\"http://www.aiim.org/pdfa/ns/schema#\" xmlns:pdfaProperty=\"http://www.aiim.org/pdfa/ns/property#\">\n"
    "<pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType=\"Resource\">\n"
    "<pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>\n"
    "<pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>\n"
    "<pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>\n"
    "<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType=\"Resource\">\n"
    "<pdfaProperty:name>part</pdfaProperty:name>\n"
    "<pdfaProperty:valueType>Integer</pdfaProperty:valueType>\n"
    "<pdfaProperty:category>internal</pdfaProperty:category>\n"
    "<pdfaProperty:description>Part of ISO 14289 to which the file is built</pdfaProperty:description>\n"
    "</rdf:li></rdf:Seq></pdfaSchema:property>\n"
    "</rdf:li></rdf:Bag></pdfaExtension:schemas>\n</rdf:Description>\n";

constexpr std::string_view kPacketFoot = "</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"w\"?>";

}  // namespace

bool is_iso_date(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
  std::string digits(text.substr(0, 4));
  digits += text.substr(5, 2);
  digits += text.substr(8, 2);
  if (!std::all_of(digits.begin(), digits.end(), base::is_digit)) return false;
  const std::string_view month = text.substr(5, 2);
  const std::string_view day = text.substr(8, 2);
  return month >= "01" && month <= "12" && day >= "01" && day <= "31";
}

std::string info_entries(const page::Document& document) {
  std::string out = "/Title ";
  append_text(out, document.title);
  if (!document.subject.empty()) {
    out += " /Subject ";
    append_text(out, document.subject);
  }
  out += " /Creator ";
  append_text(out, kProducer);
  out += " /Producer ";
  append_text(out, kProducer);
  if (!is_iso_date(document.iso_date)) return out;
  std::string day = document.iso_date;
  day.erase(std::remove(day.begin(), day.end(), '-'), day.end());
  return out + " /CreationDate (D:" + day + "000000Z) /ModDate (D:" + day + "000000Z)";
}

std::string xmp_packet(const page::Document& document) {
  std::string out(kPacketHead);
  out +=
      "<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\">\n"
      "<dc:format>application/pdf</dc:format>\n";
  append_language_alternative(out, "dc:title", document.title);
  append_language_alternative(out, "dc:description", document.subject);
  out +=
      "<dc:language><rdf:Bag><rdf:li>" + xml_text(document.language) + "</rdf:li></rdf:Bag></dc:language>\n</rdf:Description>\n";
  out += "<rdf:Description rdf:about=\"\" xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\">\n<xmp:CreatorTool>";
  out += kProducer;
  out += "</xmp:CreatorTool>\n";
  if (is_iso_date(document.iso_date)) {
    for (std::string_view name : {"CreateDate", "ModifyDate", "MetadataDate"}) {
      const std::string element = "xmp:" + std::string(name);
      out += "<" + element + ">" + document.iso_date + "T00:00:00Z</" + element + ">\n";
    }
  }
  out += "</rdf:Description>\n<rdf:Description rdf:about=\"\" xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\">\n<pdf:Producer>";
  out += kProducer;
  out += "</pdf:Producer>\n</rdf:Description>\n";
  out += kStandards;
  out += kExtension;
  return out += kPacketFoot;
}

}  // namespace benchleaf::pdf
