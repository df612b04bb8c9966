// In: dictionaries, streams, pages and outlines. Out: their bytes, object by object. libharu 2.3 numbers, links and prints
// them; text, fonts and structure it cannot do well enough, so those come in ready made.
#include "pdf/haru_file.h"

#include <hpdf.h>
#include <hpdf_doc.h>

#include <algorithm>
#include <type_traits>
#include <vector>

#include "pdf/deflate.h"

// Below, public but undocumented fields are used. Another minor version must be read before it is let in.
#if HPDF_MAJOR_VERSION != 2 || HPDF_MINOR_VERSION != 3
#error "haru_file.cc is written for libharu 2.3"
#endif
static_assert(std::is_same_v<decltype(HPDF_Dict_Rec::write_fn), HPDF_Dict_OnWriteFunc>);
static_assert(std::is_same_v<decltype(HPDF_Dict_Rec::stream), HPDF_Stream>);
static_assert(std::is_same_v<decltype(HPDF_Obj_Header::obj_id), HPDF_UINT32>);
static_assert(std::is_same_v<decltype(HPDF_Doc_Rec::xref), HPDF_Xref>);
static_assert(std::is_same_v<decltype(HPDF_Doc_Rec::info), HPDF_Dict>);
static_assert(std::is_same_v<decltype(HPDF_Doc_Rec::root_pages), HPDF_Pages>);
static_assert(std::is_same_v<decltype(HPDF_Xref_Rec::entries), HPDF_List>);
static_assert(std::is_same_v<decltype(HPDF_XrefEntry_Rec::obj), void*>);
static_assert(std::is_same_v<decltype(HPDF_List_Rec::items_per_block), HPDF_UINT>);
static_assert(std::is_same_v<decltype(HPDF_PageAttr_Rec::contents), HPDF_Dict>);
static_assert(std::is_same_v<decltype(HPDF_Stream_Rec::attr), void*>);

namespace benchleaf::pdf {

namespace {

constexpr HPDF_UINT kPagesPerNode = 256;
constexpr HPDF_UINT kFirstGrowth = 1024;
constexpr HPDF_UINT32 kNumberMask = 0x00FFFFFF;

/// Where libharu's callbacks find us again: as the user data of the stream that it writes to.
struct Sink {
  std::string& bytes;
  const std::vector<std::string>& entries;
};

ObjectNumber number_of(HPDF_Dict dictionary) { return static_cast<ObjectNumber>(dictionary->header.obj_id & kNumberMask); }

// Called from C: nothing may be thrown.
HPDF_STATUS write_bytes(HPDF_Stream stream, const HPDF_BYTE* bytes, HPDF_UINT size) noexcept {
  static_cast<Sink*>(stream->attr)->bytes.append(reinterpret_cast<const char*>(bytes), size);
  return HPDF_OK;
}

HPDF_STATUS write_entries(HPDF_Dict dictionary, HPDF_Stream stream) noexcept {
  Sink& sink = *static_cast<Sink*>(stream->attr);
  const std::size_t number = static_cast<std::size_t>(number_of(dictionary));
  if (number >= sink.entries.size() || sink.entries.at(number).empty()) return HPDF_OK;
  sink.bytes += sink.entries.at(number);
  sink.bytes += '\n';
  stream->size += static_cast<HPDF_UINT>(sink.entries.at(number).size() + 1);
  return HPDF_OK;
}

void note_error(HPDF_STATUS code, HPDF_STATUS /*detail*/, void* first) noexcept {
  HPDF_STATUS& noted = *static_cast<HPDF_STATUS*>(first);
  if (noted == HPDF_OK) noted = code;
}

}  // namespace

struct HaruFile::State {
  HPDF_STATUS first_error = HPDF_OK;
  HPDF_Doc document = nullptr;
  std::vector<std::string> entries;  ///< by object number

  ~State() {
    if (document != nullptr) HPDF_Free(document);
  }
  /// libharu's list grows by a fixed number of entries and copies them all each time.
  void grow() const {
    HPDF_List objects = document->xref->entries;
    objects->items_per_block = std::max(kFirstGrowth, objects->count);
  }
  /// Has the entries printed behind those that libharu keeps; takes over the text.
  ObjectNumber adopt(HPDF_Dict dictionary, std::string text) {
    dictionary->write_fn = write_entries;
    const ObjectNumber number = number_of(dictionary);
    const std::size_t at = static_cast<std::size_t>(number);
    if (at >= entries.size()) entries.resize(at + 1);
    entries.at(at) = std::move(text);
    return number;
  }
  void* object(ObjectNumber number) const { return HPDF_Xref_GetEntry(document->xref, static_cast<HPDF_UINT>(number))->obj; }
};

HaruFile::HaruFile() : state_(std::make_unique<State>()) {
  state_->document = HPDF_New(note_error, &state_->first_error);
  if (state_->document == nullptr) return;
  HPDF_SetPagesConfiguration(state_->document, kPagesPerNode);
  state_->adopt(state_->document->catalog, {});
  state_->adopt(state_->document->root_pages, {});
  HPDF_Dict_RemoveElement(state_->document->info, "Producer");
  state_->adopt(state_->document->info, {});
}

HaruFile::~HaruFile() = default;

ObjectNumber HaruFile::add_dictionary(std::string entries) {
  state_->grow();
  HPDF_Dict dictionary = HPDF_Dict_New(state_->document->mmgr);
  if (dictionary == nullptr || HPDF_Xref_Add(state_->document->xref, dictionary) != HPDF_OK) return 0;
  return state_->adopt(dictionary, std::move(entries));
}

ObjectNumber HaruFile::add_stream(std::string entries, std::string_view bytes, Packing packing) {
  state_->grow();
  HPDF_Dict stream = HPDF_DictStream_New(state_->document->mmgr, state_->document->xref);
  if (stream == nullptr) return 0;
  std::string packed;
  if (packing == Packing::flate) {
    packed = deflated(bytes);
    bytes = packed;
    entries += " /Filter /FlateDecode";
  }
  HPDF_Stream_Write(stream->stream, reinterpret_cast<const HPDF_BYTE*>(bytes.data()), static_cast<HPDF_UINT>(bytes.size()));
  return state_->adopt(stream, std::move(entries));
}

ObjectNumber HaruFile::add_page(std::string_view packed_content) {
  state_->grow();
  HPDF_Page page = HPDF_AddPage(state_->document);
  if (page == nullptr) return 0;
  HPDF_Dict_RemoveElement(page, "MediaBox");
  HPDF_Dict_RemoveElement(page, "Resources");
  HPDF_Dict contents = static_cast<HPDF_PageAttr>(page->attr)->contents;
  HPDF_Stream_Write(contents->stream, reinterpret_cast<const HPDF_BYTE*>(packed_content.data()),
                    static_cast<HPDF_UINT>(packed_content.size()));
  state_->adopt(contents, "/Filter /FlateDecode");
  return state_->adopt(page, {});
}

ObjectNumber HaruFile::add_outline(ObjectNumber parent, std::string entries) {
  state_->grow();
  HPDF_Outline above = parent == 0 ? nullptr : static_cast<HPDF_Outline>(state_->object(parent));
  HPDF_Outline outline = HPDF_CreateOutline(state_->document, above, "", nullptr);
  if (outline == nullptr) return 0;
  HPDF_Dict_RemoveElement(outline, "Title");
  HPDF_Dict_RemoveElement(outline, "Type");  // only the root has one
  HPDF_Outline_SetOpened(outline, HPDF_FALSE);
  return state_->adopt(outline, std::move(entries));
}

void HaruFile::set_entries(ObjectNumber number, std::string entries) {
  state_->entries.at(static_cast<std::size_t>(number)) = std::move(entries);
}

ObjectNumber HaruFile::catalog() const { return number_of(state_->document->catalog); }

ObjectNumber HaruFile::page_tree() const { return number_of(state_->document->root_pages); }

ObjectNumber HaruFile::info() const { return number_of(state_->document->info); }

ObjectNumber HaruFile::next_number() const { return static_cast<ObjectNumber>(state_->document->xref->entries->count); }

void HaruFile::write(FileOutput& out) {
  Sink sink{out.bytes(), state_->entries};
  HPDF_Stream stream = HPDF_CallbackWriter_New(state_->document->mmgr, write_bytes, &sink);
  if (stream == nullptr) return;
  for (ObjectNumber number = 1; number < next_number(); ++number) {
    out.begin(number);
    HPDF_Obj_WriteValue(state_->object(number), stream, nullptr);
    out.end();
  }
  HPDF_Stream_Free(stream);
}

std::string HaruFile::error() const {
  if (state_->document == nullptr) return "no memory for a document";
  if (std::string_view(HPDF_GetVersion()) != HPDF_VERSION_TEXT) return "another libharu than the one it was built with";
  const HPDF_STATUS code = state_->first_error != HPDF_OK ? state_->first_error : HPDF_GetError(state_->document);
  if (code == HPDF_OK) return {};
  std::string words = "libharu error 0x";
  append_hex16(words, static_cast<std::uint32_t>(code));
  return words;
}

}  // namespace benchleaf::pdf
