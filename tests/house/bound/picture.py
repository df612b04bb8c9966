"""Pages as poppler paints them, read without a library of pictures."""

import tools

MM = 72 / 25.4


class Picture:
    """Samples of part of a page; channels is 1 for grey, 3 for colour. Places are in points from the top left of the page."""

    def __init__(self, pdf, page, dpi, box=None, colour=False):
        self.scale = dpi / 72
        self.channels = 3 if colour else 1
        command = ["pdftoppm", "-r", dpi, "-f", page, "-l", page, "-singlefile"]
        self.left = self.top = 0
        if box:
            self.left, self.top = round(box[0] * self.scale), round(box[1] * self.scale)
            width, height = round((box[2] - box[0]) * self.scale), round((box[3] - box[1]) * self.scale)
            command += ["-x", self.left, "-y", self.top, "-W", max(1, width), "-H", max(1, height)]
        if not colour:
            command.append("-gray")
        data = tools.output(*command, pdf)
        _, size, _, self.samples = data.split(b"\n", 3)
        self.width, self.height = (int(word) for word in size.split())

    def row(self, y):
        """Samples of the row at a height in points."""
        at = min(max(round(y * self.scale) - self.top, 0), self.height - 1) * self.width * self.channels
        return self.samples[at:at + self.width * self.channels]

    def column(self, x):
        at = min(max(round(x * self.scale) - self.left, 0), self.width - 1)
        return self.samples[at::self.width]

    def along_x(self, sample):
        """Points from the left of the page of a sample's middle in a row."""
        return (self.left + sample + 0.5) / self.scale

    def along_y(self, sample):
        return (self.top + sample + 0.5) / self.scale


def dark_runs(samples, below=128):
    """Middles of runs of dark samples."""
    middles, start = [], None
    for at, sample in enumerate(samples + b"\xff"):
        if sample < below and start is None:
            start = at
        elif sample >= below and start is not None:
            middles.append((start + at - 1) / 2)
            start = None
    return middles
